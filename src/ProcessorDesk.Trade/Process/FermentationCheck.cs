namespace ProcessorDesk.Trade.Process;

/// <summary>What a fermentation's record says of the degree-hours it may take.</summary>
/// <param name="Verdict">Whether it became sour enough within them.</param>
/// <param name="Shown">Degree-hours until it was sour enough, or until the record ends; exactly.</param>
/// <param name="Limit">By the highest temperature reached; null without a temperature.</param>
/// <param name="Highest">The highest temperature shown until then, up to the hundredth; null without one.</param>
/// <param name="SourAt">When the record first shows it sour enough; null where it does not, or gives no times.</param>
/// <param name="Findings">What a person should know or do; none where it meets.</param>
public sealed record FermentationCheck(
    ProcessVerdict Verdict, Ratio Shown, DegreeHourLimit? Limit, Temperature? Highest, DateTime? SourAt, IReadOnlyList<Finding> Findings)
{
    /// <summary>What they add up from, at the probe that counts, in order; empty where stages were typed.</summary>
    public IReadOnlyList<WarmTime> Times { get; init; } = [];

    /// <summary>The degree-hours shown, up to the tenth.</summary>
    public decimal DegreeHours => -(Shown * Ratio.Of(-10, 1)).Down() / 10m;

    public string Source => (Limit ?? DegreeHourLimit.All[0]).Source;

    /// <summary>"meets the degree-hours", "does not meet", "not shown by the record".</summary>
    public string Words => Verdict.Words("the degree-hours");
}
