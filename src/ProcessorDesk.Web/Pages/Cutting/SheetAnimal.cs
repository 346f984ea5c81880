using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Web.Pages.Cutting;

/// <summary>An animal on the cut sheet, with what was looked to on it.</summary>
/// <param name="Shared">The animal and what of it is the job's.</param>
/// <param name="Weighed">What stands weighed of the whole animal, the oldest first.</param>
public sealed record SheetAnimal(
    SharedAnimal Shared, Sex Sex, string? Rail, string? Condition, CattleAge? CattleAge,
    IReadOnlyList<string> GiveBack, IReadOnlyList<SheetAnimal.Tick> Ticks, IReadOnlyList<WeighedNet> Weighed)
{
    public int Id => Shared.AnimalId;

    public Species Species => Shared.Species;

    public string? Tag => Shared.Tag;

    /// <summary>"whole", "1/2": what of it is the job's.</summary>
    public string Share => Shared.Share.Fraction == Ratio.One ? "whole" : Shared.Share.Fraction.ToString();

    public string Name => Sex == Sex.Unknown ? Wording.Of(Species) : $"{Wording.Of(Species)}, {Wording.Of(Sex).ToLowerInvariant()}";

    public string TagWords => Tag is null ? "no tag" : $"tag {Tag}";

    public Tick? TickOf(string item) => Ticks.FirstOrDefault(tick => tick.Item == item);

    /// <summary>One query.</summary>
    public static IReadOnlyList<SheetAnimal> Of(RecordsContext records, int jobId) =>
    [
        .. records.Shares.AsNoTracking().Where(share => share.JobId == jobId).OrderBy(share => share.AnimalId)
            .Select(share => new
            {
                share.AnimalId,
                share.Animal.Species,
                share.Animal.Sex,
                share.Animal.Tag,
                share.Animal.ArrivalState,
                share.Animal.ArrivedAt,
                share.Animal.Rail,
                share.Animal.Condition,
                share.Animal.CattleAge,
                Owners = records.Shares.Where(one => one.AnimalId == share.AnimalId).OrderBy(one => one.Id)
                    .Select(one => new ShareRow(one.JobId, one.Numerator, one.Denominator)).ToList(),
                Parts = share.Animal.Parts.Select(part => new { part.Id, part.Kind, part.Note }).ToList(),
                Ticks = records.ChecklistTicks.Where(tick => tick.AnimalId == share.AnimalId)
                    .Select(tick => new Tick(tick.Item, tick.At, records.Staff.Where(staff => staff.Id == tick.ById).Select(staff => staff.Initials).First()))
                    .ToList(),
                Weighed = records.WeighIns.Where(weighIn => weighIn.AnimalId == share.AnimalId && weighIn.JobId == null
                        && !records.Strikes.Any(strike => strike.WeighInId == weighIn.Id))
                    .Select(weighIn => new { weighIn.Id, weighIn.At, weighIn.Kind, weighIn.Net.Milligrams }).ToList(),
            })
            .AsSingleQuery()
            .AsEnumerable()
            .Select(one => new SheetAnimal(
                new SharedAnimal(one.AnimalId, one.Species, one.Tag, one.ArrivalState, one.ArrivedAt, ShareRow.Of(one.Owners, jobId)),
                one.Sex, one.Rail, one.Condition, one.CattleAge,
                [.. one.Parts.OrderBy(part => part.Id).Select(part => part.Note is null ? Wording.Of(part.Kind) : $"{Wording.Of(part.Kind)} ({part.Note})")],
                one.Ticks,
                [.. one.Weighed.OrderBy(weighIn => weighIn.At).ThenBy(weighIn => weighIn.Id)
                    .Select(weighIn => new WeighedNet(weighIn.Kind, one.AnimalId, null, Weight.FromMilligrams(weighIn.Milligrams)))]))
    ];

    /// <summary>Looked to, when and by whom.</summary>
    public sealed record Tick(string Item, DateTime At, string By);
}
