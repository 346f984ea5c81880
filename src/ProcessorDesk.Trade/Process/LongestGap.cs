namespace ProcessorDesk.Trade.Process;

/// <summary>
/// The longest time between two readings of one probe that is still filled in between them. What is longer is a gap and counts
/// for nothing. Common practice, no source; a shop or its inspector may ask for less, and hands its own figure in.
/// </summary>
public static class LongestGap
{
    public static TimeSpan Cooking { get; } = TimeSpan.FromMinutes(15);

    public static TimeSpan Cooling { get; } = TimeSpan.FromMinutes(60);

    public static TimeSpan Fermenting { get; } = TimeSpan.FromHours(4);
}
