namespace ProcessorDesk.Records;

public static class PriceQueries
{
    /// <summary>The list in force on a day: the one that started last.</summary>
    public static IQueryable<PriceList> InForceOn(this IQueryable<PriceList> lists, DateOnly day) =>
        lists.Where(list => list.StartsOn <= day).OrderByDescending(list => list.StartsOn).ThenByDescending(list => list.Id).Take(1);
}
