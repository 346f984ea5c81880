namespace ProcessorDesk.Trade.Deadlines;

/// <summary>So many days, months or years, as a rule says it.</summary>
/// <param name="Count">Zero or more.</param>
/// <param name="Unit">Days, months or years.</param>
public sealed record CalendarPeriod(int Count, CalendarUnit Unit)
{
    /// <summary>
    /// The last day of the period that begins on a day. A month or a year ends on the day of the same number, or on the month's last
    /// where it has none: two months from 31 December end on 28 February, a year from 29 February on 28 February.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The count is below zero, or the end lies past the year 9999.</exception>
    public DateOnly EndFrom(DateOnly day)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(Count);
        return Unit switch
        {
            CalendarUnit.Day => day.AddDays(Count),
            CalendarUnit.Month => day.AddMonths(Count),
            CalendarUnit.Year => day.AddYears(Count),
        };
    }

    /// <summary>"30 days", "1 month".</summary>
    public string Print() => Unit switch
    {
        CalendarUnit.Day => Count == 1 ? "1 day" : $"{Count} days",
        CalendarUnit.Month => Count == 1 ? "1 month" : $"{Count} months",
        CalendarUnit.Year => Count == 1 ? "1 year" : $"{Count} years",
    };
}
