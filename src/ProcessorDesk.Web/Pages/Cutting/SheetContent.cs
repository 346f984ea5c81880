using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Cutting;

/// <summary>What the cutter must know of a job, on the screen and on paper alike.</summary>
public sealed record SheetContent(
    int JobId, int Number, string Owner, int Revision, DateOnly? Promised, bool NoPork, string? Notes, PackWrap Wrap,
    DateTime? StartedAt, DateTime? DoneAt, bool SplitAgreed,
    IReadOnlyList<SheetAnimal> Animals, IReadOnlyList<SheetCut> Cuts, IReadOnlyList<SheetAsk> Asks)
{
    /// <param name="atTable">What stands weighed for the job itself.</param>
    public JobWeights Weights(IEnumerable<WeighedNet> atTable, ScaleDivision division) =>
        JobWeights.Of(Animals.Select(animal => animal.Shared), Animals.SelectMany(animal => animal.Weighed).Concat(atTable), division);

    /// <summary>Two queries: the job with its order, and its animals.</summary>
    public static SheetContent? Find(RecordsContext records, int jobId, ShopDay shop)
    {
        var job = records.Jobs.AsNoTracking().Where(one => one.Id == jobId)
            .Select(one => new
            {
                one.Number,
                Owner = one.Owner.Name,
                one.SheetRevision,
                one.PromisedFor,
                one.NoPork,
                one.Notes,
                one.Wrap,
                one.CuttingStartedAt,
                one.CuttingDoneAt,
                one.SplitAgreedAt,
                Cuts = one.CutOrder.Select(line => new { line.Position, line.Group, line.Cut, line.Detail, line.PerPack }).ToList(),
                Asks = one.Asks.Select(ask => new
                {
                    ask.Position,
                    Product = records.Products.Where(product => product.Id == ask.ProductId).Select(product => product.Name).First(),
                    ask.Kind,
                    Milligrams = ask.Amount.Milligrams,
                    Ppm = ask.Percent.PartsPerMillion,
                    LeanPpm = records.FormulaVersions.Where(formula => formula.ProductId == ask.ProductId).OrderByDescending(formula => formula.Number)
                        .Select(formula => (int?)formula.LeanShare.PartsPerMillion).FirstOrDefault(),
                    AddedFat = records.FormulaVersions.Where(formula => formula.ProductId == ask.ProductId).OrderByDescending(formula => formula.Number)
                        .Select(formula => formula.AddedFat).FirstOrDefault(),
                }).ToList(),
            })
            .AsSingleQuery()
            .SingleOrDefault();
        if (job is null)
            return null;
        return new SheetContent(
            jobId, job.Number, job.Owner, job.SheetRevision, job.PromisedFor, job.NoPork, job.Notes, job.Wrap,
            job.CuttingStartedAt, job.CuttingDoneAt, job.SplitAgreedAt is not null,
            SheetAnimal.Of(records, jobId),
            [.. job.Cuts.OrderBy(cut => cut.Position).Select(cut => new SheetCut(
                CutMenu.GroupName(cut.Group), CutMenu.CutName(cut.Cut), cut.Detail, cut.PerPack is { } count ? $"{count} to a pack" : ""))],
            [.. job.Asks.OrderBy(ask => ask.Position).Select(ask => new SheetAsk(
                ask.Product,
                Wanted(ask.Kind, Weight.FromMilligrams(ask.Milligrams), Proportion.FromPartsPerMillion(ask.Ppm), shop),
                ask.LeanPpm is { } lean ? Blend(Proportion.FromPartsPerMillion(lean), ask.AddedFat) : ""))]);
    }

    private static string Wanted(AskKind kind, Weight amount, Proportion percent, ShopDay shop) => kind switch
    {
        AskKind.OwnLean => $"{shop.Print(amount)} of own meat",
        AskKind.Finished => $"{shop.Print(amount)} finished",
        AskKind.Percent => $"{percent.Print()} of the lean",
        AskKind.Rest => "the rest",
    };

    private static string Blend(Proportion lean, string? addedFat)
    {
        var parts = $"{lean.Percent:0.##} : {100m - lean.Percent:0.##}";
        return lean == Proportion.Whole ? "no fat added" : addedFat is null ? parts : $"{parts} with {addedFat.ToLowerInvariant()}";
    }
}

/// <summary>One muscle group and its instruction.</summary>
public sealed record SheetCut(string Group, string Cut, string? Detail, string Pack)
{
    public string Instruction => Detail is null ? Cut : $"{Cut}, {Detail}";
}

/// <summary>One product of the grind: what is wanted and its blend.</summary>
public sealed record SheetAsk(string Product, string Wanted, string Blend);
