using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Yields;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Cooler;

/// <summary>Every animal that is not yet cut, in the order of what to do next.</summary>
public sealed class IndexModel(RecordsContext records, ShopDay shop) : StationPage
{
    public IReadOnlyList<Line> Lines { get; private set; } = [];

    /// <summary>The guidance of the species that hang here, each with its source.</summary>
    public IReadOnlyList<string> Guidance { get; private set; } = [];

    public void OnGet()
    {
        var hanging = records.Jobs.Where(job => job.HandedOverAt == null && job.CuttingStartedAt == null)
            .SelectMany(job => job.Shares).Select(share => share.AnimalId);
        var jobs = records.Shares.AsNoTracking().Where(share => hanging.Contains(share.AnimalId))
            .Select(share => new { share.AnimalId, share.JobId, share.Job.Number, Owner = share.Job.Owner.Name, share.Job.PromisedFor })
            .ToLookup(share => share.AnimalId);
        var holds = records.Holds.AsNoTracking().Standing()
            .Select(hold => new { hold.AnimalId, hold.JobId, hold.Reason })
            .ToList();
        var weights = records.WeighIns.AsNoTracking().Standing()
            .OfAnimals(hanging)
            .OrderBy(weighIn => weighIn.At).ThenBy(weighIn => weighIn.Id)
            .Select(weighIn => new { AnimalId = weighIn.AnimalId!.Value, weighIn.Kind, weighIn.Net })
            .AsEnumerable()
            .ToLookup(weighIn => (weighIn.AnimalId, weighIn.Kind), weighIn => (Weight?)weighIn.Net);
        var animals = records.Animals.AsNoTracking().Where(animal => hanging.Contains(animal.Id))
            .Select(animal => new
            {
                animal.Id,
                animal.Species,
                animal.Tag,
                animal.Rail,
                animal.ArrivalState,
                animal.ArrivedAt,
                animal.HungAt,
                animal.SurfaceTemperature,
            })
            .ToList();
        var lines = animals.Select(animal =>
        {
            var held = holds.Where(hold => hold.AnimalId == animal.Id || jobs[animal.Id].Any(job => job.JobId == hold.JobId))
                .Select(hold => Wording.Of(hold.Reason)).Distinct().ToList();
            var hot = weights[(animal.Id, WeighInKind.HotHanging)].LastOrDefault();
            var chilled = weights[(animal.Id, WeighInKind.ChilledHanging)].LastOrDefault();
            var next = NextToCut.Of(
                held.Count > 0, animal.Species, animal.ArrivalState, animal.SurfaceTemperature, chilled is not null,
                animal.ArrivedAt, animal.HungAt, jobs[animal.Id].Min(job => job.PromisedFor), shop);
            return new Line(
                animal.Id, Wording.Of(animal.Species), animal.Tag, animal.Rail,
                [.. jobs[animal.Id].Select(job => new Whose(job.JobId, job.Number, job.Owner))],
                held, next,
                weights[(animal.Id, WeighInKind.Arrival)].LastOrDefault() is { } arrival ? shop.PrintRail(arrival) : null,
                hot is { } hotWeight ? shop.PrintRail(hotWeight) : null,
                chilled is { } cold ? shop.PrintRail(cold) : null);
        });
        Lines = [.. NextToCut.Sort(lines, line => line.Next)];
        Guidance =
        [
            .. animals.Select(animal => animal.Species).Distinct().Order()
                .GroupBy(species => HangingGuidance.For(species).Id == "hanging-none" ? "none" : HangingGuidance.For(species).Source)
                .Select(group => $"{string.Join(", ", group.Select(Wording.Of))}: {(group.Key == "none" ? "no days are published" : group.Key)}.")
        ];
    }

    public sealed record Whose(int JobId, int Number, string Owner);

    public sealed record Line(
        int AnimalId, string Species, string? Tag, string? Rail, IReadOnlyList<Whose> Jobs, IReadOnlyList<string> Held, NextToCut Next,
        string? Arrival, string? Hot, string? Chilled);
}
