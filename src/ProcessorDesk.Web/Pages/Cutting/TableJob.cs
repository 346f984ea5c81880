using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Cutting;

/// <summary>A job at the table: what the weigh-in page must know of it.</summary>
public sealed record TableJob(
    int Id, int Number, string Owner, bool NoPork, bool Started, bool Done, bool SplitAgreed, IReadOnlyList<TableAnimal> Animals, IReadOnlyList<string> Cuts)
{
    /// <summary>Weights may be booked: started, and not finished.</summary>
    public bool IsOnTable => Started && !Done;

    public static TableJob? Find(RecordsContext records, int jobId, ShopDay shop)
    {
        var job = records.Jobs.AsNoTracking().Where(one => one.Id == jobId)
            .Select(one => new
            {
                one.Number,
                Owner = one.Owner.Name,
                one.NoPork,
                one.CuttingStartedAt,
                one.CuttingDoneAt,
                one.SplitAgreedAt,
                Cuts = one.CutOrder.Select(line => new { line.Position, line.Group, line.Cut }).ToList(),
            })
            .SingleOrDefault();
        if (job is null)
            return null;
        var weights = records.WeightsOf(jobId, shop.Settings.BenchDivision);
        return new TableJob(
            jobId, job.Number, job.Owner, job.NoPork, job.CuttingStartedAt is not null, job.CuttingDoneAt is not null, job.SplitAgreedAt is not null,
            [.. weights.Animals.Select(animal => new TableAnimal(animal.AnimalId, TableAnimal.NameOf(animal.Species, animal.Tag), animal.Tag, animal.Hanging ?? animal.Arrival))],
            [.. job.Cuts.Where(cut => cut.Cut != CutMenu.Grind).OrderBy(cut => cut.Position).Select(cut => $"{CutMenu.GroupName(cut.Group)}: {CutMenu.CutName(cut.Cut)}")]);
    }
}

/// <param name="Weight">Hanging where it was weighed so, as it came in otherwise; null where it was not weighed.</param>
public sealed record TableAnimal(int Id, string Name, string? Tag, Weight? Weight)
{
    public static string NameOf(Species species, string? tag) => $"{Wording.Of(species)}, {(tag is null ? "no tag" : "tag " + tag)}";
}
