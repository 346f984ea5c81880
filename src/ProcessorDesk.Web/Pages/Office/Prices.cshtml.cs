using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade.Pricing;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Office;

/// <summary>Every price list by the day it starts, the latest first.</summary>
public sealed class PricesModel(RecordsContext records, ShopDay shop) : StationPage
{
    public IReadOnlyList<Row> Lists { get; private set; } = [];

    /// <summary>The list asked today; null where none is.</summary>
    public int? InForceId { get; private set; }

    public void OnGet()
    {
        Lists =
        [
            .. records.PriceLists.AsNoTracking().OrderByDescending(list => list.StartsOn).ThenByDescending(list => list.Id)
                .Select(list => new Row(list.Id, list.Name, list.StartsOn, list.UsedAt, list.Prices.Count))
        ];
        InForceId = DatedPrices.InForce(Lists.Reverse(), list => list.StartsOn, shop.Today)?.Id;
    }

    public string Date(DateOnly day) => shop.Date(day);

    public string Date(DateTime utc) => shop.Date(utc);

    public bool IsToCome(Row list) => list.StartsOn > shop.Today;

    public sealed record Row(int Id, string Name, DateOnly StartsOn, DateTime? UsedAt, int Count);
}
