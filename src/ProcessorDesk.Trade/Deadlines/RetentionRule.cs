namespace ProcessorDesk.Trade.Deadlines;

/// <summary>How long one authority wants a record kept. Which ones apply to a shop is its own setting.</summary>
/// <param name="Id">Lasting name; a shop's own figure names the one it stands for.</param>
/// <param name="Name">Who asks, and for what meat.</param>
/// <param name="Start">The day it counts from.</param>
/// <param name="Length">How long from then.</param>
/// <param name="Source">Where it is published.</param>
/// <param name="Mark">How the source was read: A, B, C, M, or "–".</param>
public sealed record RetentionRule(string Id, string Name, RetentionStart Start, CalendarPeriod Length, string Source, string Mark)
{
    /// <summary>Livestock, and a shop that does both.</summary>
    public static RetentionRule Federal { get; } = new(
        "keep-federal", "Federal, livestock and mixed shops", RetentionStart.EndOfHandOverYear, new(2, CalendarUnit.Year), "9 CFR 320.3", "A");

    public static RetentionRule TexasCustom { get; } = new(
        "keep-texas-custom", "Texas, custom processing", RetentionStart.Processed, new(2, CalendarUnit.Year), "25 TAC 221.14", "A");

    public static RetentionRule SouthDakotaGame { get; } = new(
        "keep-south-dakota-game", "South Dakota, game", RetentionStart.Received, new(1, CalendarUnit.Year), "ARSD 41:06:03:11", "A");

    public static RetentionRule Colorado { get; } = new(
        "keep-colorado", "Colorado", RetentionStart.HandedOver, new(1, CalendarUnit.Year), "Colorado's rule for processors", "A");

    /// <summary>Every published rule, once.</summary>
    public static IReadOnlyList<RetentionRule> All { get; } = [Federal, TexasCustom, SouthDakotaGame, Colorado];

    /// <summary>The last day the record is kept; null while the day it counts from has not come.</summary>
    public DateOnly? Until(JobDays days)
    {
        var from = Start switch
        {
            RetentionStart.EndOfHandOverYear => days.HandedOver is { } over ? new DateOnly(over.Year, 12, 31) : null,
            RetentionStart.Received => days.Received,
            RetentionStart.Processed => days.Processed,
            RetentionStart.HandedOver => days.HandedOver,
        };
        return from is { } day ? Length.EndFrom(day) : null;
    }
}
