namespace ProcessorDesk.Trade.Deadlines;

/// <summary>What a period is counted in.</summary>
public enum CalendarUnit
{
    Day = 1,
    Month = 2,
    Year = 3,
}
