namespace ProcessorDesk.Trade.Process;

/// <summary>What a cooking record says of its table.</summary>
/// <param name="Verdict">Of the table row alone; <paramref name="ComeUp"/> has a verdict of its own, for a person to look at.</param>
/// <param name="Table">The table it was held against; null where none holds for the product.</param>
/// <param name="Row">The hottest row met, else the row that came closest; null where no time was shown at any.</param>
/// <param name="Found">Time shown at or above that row at the coldest probe, in all; down to the tenth of a second.</param>
/// <param name="ComeUp">How long the meat took to get hot.</param>
/// <param name="Findings">What a person should know or do, the verdict's own reason first; there may be some beside "meets".</param>
public sealed record LethalityCheck(
    ProcessVerdict Verdict, LethalityTable? Table, LethalityRow? Row, TimeSpan Found, ComeUp ComeUp, IReadOnlyList<Finding> Findings)
{
    /// <summary>Time the row asks for; null without a row.</summary>
    public TimeSpan? Allowed => Row?.Dwell;

    public string Source => Table?.Source ?? LethalityTables.Guideline;

    /// <summary>"meets the table row", "does not meet", "not shown by the record".</summary>
    public string Words => Verdict.Words("the table row");
}
