using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Cutting;

/// <summary>A weigh-in of a job as the table sees it; a struck one stays, with its reason and hand.</summary>
public sealed record TableWeighIn(
    int Id, WeighedNet Weighed, int? FillingId, string What, string Net, string GrossAndTare, string When, string By, string? Struck)
{
    /// <summary>Newest first.</summary>
    public static IReadOnlyList<TableWeighIn> Of(RecordsContext records, int jobId, ShopDay shop, int? most = null)
    {
        var newest = records.WeighIns.AsNoTracking()
            .Where(weighIn => weighIn.JobId == jobId && weighIn.Kind != WeighInKind.Box)
            .OrderByDescending(weighIn => weighIn.Id)
            .Select(weighIn => new
            {
                weighIn.Id,
                weighIn.Kind,
                weighIn.AnimalId,
                weighIn.FillingId,
                Lug = weighIn.Filling == null ? (int?)null : weighIn.Filling.Lug.Number,
                weighIn.Gross,
                weighIn.Tare,
                weighIn.Net,
                weighIn.Note,
                weighIn.Packs,
                weighIn.At,
                By = records.Staff.Where(staff => staff.Id == weighIn.ById).Select(staff => staff.Initials).First(),
                Struck = weighIn.Strike == null ? null : new { weighIn.Strike.Because, weighIn.Strike.At, By = records.Staff.Where(staff => staff.Id == weighIn.Strike.ById).Select(staff => staff.Initials).First() },
            });
        return
        [
            .. (most is { } count ? newest.Take(count) : newest)
                .AsEnumerable()
                .Select(one => new TableWeighIn(
                    one.Id, new WeighedNet(one.Kind, one.AnimalId, jobId, one.Net), one.FillingId,
                    Words(one.Kind, one.Lug, one.Packs, one.Note),
                    shop.Print(one.Net),
                    one.Tare.IsZero ? "" : $"{shop.Print(one.Gross)} less {shop.Print(one.Tare)}",
                    shop.Moment(one.At), one.By,
                    one.Struck is { } strike ? $"Struck out by {strike.By}, {shop.Moment(strike.At)}: {strike.Because}" : null))
        ];
    }

    /// <summary>"Lean trim, lug 14", "Cuts, packed, 6 packs, backstrap".</summary>
    public static string Words(WeighInKind kind, int? lug, int? packs, string? note) =>
        string.Join(", ", new[]
        {
            Wording.Of(kind),
            lug is { } number ? $"lug {number}" : null,
            packs is { } count ? count == 1 ? "1 pack" : $"{count} packs" : null,
            note,
        }.OfType<string>());
}
