namespace ProcessorDesk.Trade.Pricing;

/// <summary>
/// Prices that carry dates. A list holds from the day it starts until a later one starts; a job keeps the list it was taken at, and only
/// what that list lacks is charged at today's. A list that a job was taken at never changes: a new one is a copy that starts later.
/// </summary>
public static class DatedPrices
{
    /// <summary>The list in force on a day: the one that started last, the later made where two start on one day; null where none has started.</summary>
    /// <typeparam name="T">A price list, in the order the lists were made.</typeparam>
    public static T? InForce<T>(IEnumerable<T> lists, Func<T, DateOnly> startsOn, DateOnly day)
        where T : class
    {
        T? found = null;
        foreach (var list in lists.Where(list => startsOn(list) <= day))
        {
            if (found is null || startsOn(list) >= startsOn(found))
                found = list;
        }

        return found;
    }

    /// <summary>A price by the list the job was taken at or, where that lacks it, by today's; null where neither has it.</summary>
    /// <param name="own">Prices of the job's own list.</param>
    /// <param name="today">Prices in force today.</param>
    /// <param name="fits">Whether a price is the one looked for; the first that is counts.</param>
    public static PriceFound<T>? Find<T>(IEnumerable<T> own, IEnumerable<T> today, Func<T, bool> fits)
        where T : class =>
        own.FirstOrDefault(fits) is { } kept ? new PriceFound<T>(kept, IsTodays: false)
        : today.FirstOrDefault(fits) is { } later ? new PriceFound<T>(later, IsTodays: true)
        : null;
}
