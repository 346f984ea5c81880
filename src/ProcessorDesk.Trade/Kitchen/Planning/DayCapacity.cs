namespace ProcessorDesk.Trade.Kitchen.Planning;

/// <summary>
/// Who goes today. Allotments are taken one by one, earliest promise first, then lowest number. One that no longer fits the day, or
/// the smokehouse if it is smoked, waits as a whole; a later, smaller one may still go. Batches are made of what was taken, so a pooled batch
/// is made of those contributions that fit.
/// </summary>
internal static class DayCapacity
{
    /// <returns>Both in turn.</returns>
    public static (IReadOnlyList<WaitingMeat> Today, IReadOnlyList<LeftWaiting> Later) Take(IEnumerable<WaitingMeat> waiting, DaySettings settings)
    {
        var (today, later) = (new List<WaitingMeat>(), new List<LeftWaiting>());
        var division = settings.Division;
        var (day, smokehouse) = (Room(settings.Day, division), Room(settings.Smokehouse, division));
        foreach (var meat in WaitingMeat.InTurn(waiting))
        {
            var count = division.CountOf(meat.Part.Green);
            var smoked = meat.Product.IsSmoked ? count : 0;
            if (count > day || smoked > smokehouse)
            {
                later.Add(new LeftWaiting(meat, count > day ? Full("The day", day, meat, settings.Day, division) : Full("The smokehouse", smokehouse, meat, settings.Smokehouse, division)));
                continue;
            }

            today.Add(meat);
            (day, smokehouse) = (day - count, smokehouse - smoked);
        }

        return (today, later);
    }

    private static long Room(Weight? capacity, ScaleDivision division) => capacity is { } set ? division.CountDown(set) : long.MaxValue;

    private static string Full(string what, long room, WaitingMeat meat, Weight? capacity, ScaleDivision division) =>
        division.CountOf(meat.Part.Green) > Room(capacity, division)
            ? $"{what} holds {division.Print(capacity ?? Weight.Zero)} in all; this is {division.Print(meat.Part.Green)}. Split it, or make it by hand."
            : $"{what} has room for {division.Print(division.FromCount(room))} more; this is {division.Print(meat.Part.Green)}.";
}
