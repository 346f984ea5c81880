namespace ProcessorDesk.Trade.Process;

/// <summary>What a cooking record says of its table.</summary>
/// <param name="Verdict">Of the table row alone; <paramref name="ComeUp"/> has a verdict of its own, for a person to look at.</param>
/// <param name="Table">The table it was held against; null where none holds for the product.</param>
/// <param name="Row">The row met with the most time to spare, else the one missed by the least; the hotter of two alike; null where no time was shown at any.</param>
/// <param name="Shown">Time shown at or above that row at the coldest probe, in all; in seconds, exactly.</param>
/// <param name="Probe">The coldest probe: the one shown for the least time at or above that row; null without a row.</param>
/// <param name="ComeUp">How long the meat took to get hot.</param>
/// <param name="Findings">What a person should know or do, the verdict's own reason first; there may be some beside "meets".</param>
public sealed record LethalityCheck(
    ProcessVerdict Verdict, LethalityTable? Table, LethalityRow? Row, Ratio Shown, int? Probe, ComeUp ComeUp, IReadOnlyList<Finding> Findings)
{
    /// <summary>When the time shown at that row was, in order.</summary>
    public IReadOnlyList<Stretch> When { get; init; } = [];

    /// <summary>The time shown, down to the second, under a minute to its tenth.</summary>
    public TimeSpan Found => ProcessTime.Down(Shown * Ratio.Of(TimeSpan.TicksPerSecond, 1));

    /// <summary>
    /// The row and the come-up as one: after more than six hours on the way the table does not apply, so that no row helps; where a gap may
    /// hide whether it was more, nothing is shown. A record that does not show the come-up at all leaves the row's verdict as it is.
    /// </summary>
    public ProcessVerdict WithComeUp => ComeUp switch
    {
        { Verdict: ProcessVerdict.DoesNotMeet } => ProcessVerdict.DoesNotMeet,
        { MayBeTooLong: true } when Verdict == ProcessVerdict.Meets => ProcessVerdict.NotShown,
        _ => Verdict,
    };

    /// <summary>Time the row asks for; null without a row.</summary>
    public TimeSpan? Allowed => Row?.Dwell;

    public string Source => Table?.Source ?? LethalityTables.Guideline;

    /// <summary>"meets the table row", "does not meet", "not shown by the record".</summary>
    public string Words => Verdict.Words("the table row");
}
