using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Web.Pages.Cutting;

/// <summary>An animal on the cut sheet, with what was looked to on it.</summary>
/// <param name="Share">"whole", "1/2": what of it is the job's.</param>
public sealed record SheetAnimal(
    int Id, Species Species, Sex Sex, string? Tag, string? Rail, string Share, string? Condition, CattleAge? CattleAge,
    IReadOnlyList<string> GiveBack, IReadOnlyList<SheetAnimal.Tick> Ticks)
{
    public string Name => Sex == Sex.Unknown ? Wording.Of(Species) : $"{Wording.Of(Species)}, {Wording.Of(Sex).ToLowerInvariant()}";

    public string TagWords => Tag is null ? "no tag" : $"tag {Tag}";

    public Tick? TickOf(string item) => Ticks.FirstOrDefault(tick => tick.Item == item);

    public static IReadOnlyList<SheetAnimal> Of(RecordsContext records, int jobId) =>
    [
        .. records.Shares.AsNoTracking().Where(share => share.JobId == jobId).OrderBy(share => share.AnimalId)
            .Select(share => new
            {
                share.AnimalId,
                share.Animal.Species,
                share.Animal.Sex,
                share.Animal.Tag,
                share.Animal.Rail,
                share.Animal.Condition,
                share.Animal.CattleAge,
                share.Numerator,
                share.Denominator,
                Parts = share.Animal.Parts.Select(part => new { part.Id, part.Kind, part.Note }).ToList(),
                Ticks = records.ChecklistTicks.Where(tick => tick.AnimalId == share.AnimalId)
                    .Select(tick => new Tick(tick.Item, tick.At, records.Staff.Where(staff => staff.Id == tick.ById).Select(staff => staff.Initials).First()))
                    .ToList(),
            })
            .AsEnumerable()
            .Select(one => new SheetAnimal(
                one.AnimalId, one.Species, one.Sex, one.Tag, one.Rail,
                one.Numerator == one.Denominator ? "whole" : Ratio.Of(one.Numerator, one.Denominator).ToString(),
                one.Condition, one.CattleAge,
                [.. one.Parts.OrderBy(part => part.Id).Select(part => part.Note is null ? Wording.Of(part.Kind) : $"{Wording.Of(part.Kind)} ({part.Note})")],
                one.Ticks))
    ];

    /// <summary>Looked to, when and by whom.</summary>
    public sealed record Tick(string Item, DateTime At, string By);
}
