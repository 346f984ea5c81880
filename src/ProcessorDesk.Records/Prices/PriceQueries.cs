using Microsoft.EntityFrameworkCore;

namespace ProcessorDesk.Records;

public static class PriceQueries
{
    /// <summary>The list in force on a day: the one that started last.</summary>
    public static IQueryable<PriceList> InForceOn(this IQueryable<PriceList> lists, DateOnly day) =>
        lists.Where(list => list.StartsOn <= day).OrderByDescending(list => list.StartsOn).ThenByDescending(list => list.Id).Take(1);

    /// <summary>One query.</summary>
    /// <param name="today">The shop's day.</param>
    public static JobPrices PricesOf(this RecordsContext records, int jobId, DateOnly today)
    {
        var own = records.Jobs.Where(job => job.Id == jobId).Select(job => job.PriceListId);
        var inForce = records.PriceLists.InForceOn(today).Select(list => list.Id);
        var prices = records.Prices.AsNoTracking()
            .Where(price => own.Contains(price.PriceListId) || inForce.Contains(price.PriceListId))
            .OrderBy(price => price.Id)
            .Select(price => new { Price = price, IsOwn = own.Contains(price.PriceListId), IsInForce = inForce.Contains(price.PriceListId) })
            .ToList();
        return new JobPrices([.. prices.Where(one => one.IsOwn).Select(one => one.Price)], [.. prices.Where(one => one.IsInForce).Select(one => one.Price)]);
    }
}
