using Microsoft.EntityFrameworkCore;

namespace ProcessorDesk.Web.Pages.Grind;

/// <summary>The jobs whose trim is weighed: first those to be split, then those agreed and not yet handed over.</summary>
public sealed class IndexModel(RecordsContext records, ShopDay day) : StationPage
{
    public IReadOnlyList<Row> ToSplit { get; private set; } = [];

    public IReadOnlyList<Row> Agreed { get; private set; } = [];

    public void OnGet()
    {
        var rows = records.Jobs.AsNoTracking()
            .Where(job => job.HandedOverAt == null && job.CuttingDoneAt != null)
            .OrderBy(job => job.PromisedFor == null).ThenBy(job => job.PromisedFor).ThenBy(job => job.Number)
            .Select(job => new Row(
                job.Id,
                job.Number,
                job.Owner.Name,
                job.PromisedFor,
                job.Asks.OrderBy(ask => ask.Position)
                    .Select(ask => records.Products.Where(product => product.Id == ask.ProductId).Select(product => product.Name).First()).ToList(),
                job.SplitAgreedAt != null,
                records.Holds.Any(hold => hold.ReleasedAt == null
                    && (hold.JobId == job.Id || job.Shares.Any(share => share.AnimalId == hold.AnimalId)))))
            .ToList();
        ToSplit = [.. rows.Where(row => !row.IsAgreed)];
        Agreed = [.. rows.Where(row => row.IsAgreed)];
    }

    public string Date(DateOnly promised) => day.Date(promised);

    public sealed record Row(
        int Id, int Number, string Owner, DateOnly? PromisedFor, IReadOnlyList<string> Products, bool IsAgreed, bool IsHeld);
}
