namespace ProcessorDesk.Trade.Curing;

/// <summary>What a check of the cure found.</summary>
/// <param name="Rule">The published figures it was held against.</param>
/// <param name="NitritePpm">Ingoing nitrite on the method's base, to ten decimals.</param>
/// <param name="NitratePpm">Ingoing nitrate on the method's base, to ten decimals.</param>
/// <param name="Meets">
/// There is a cure, nothing is past its limit, and pumped bacon has the accelerator it is prescribed. Says nothing about
/// <paramref name="BelowMinimum"/>: a dose rounded down to the small scale is always a little under a prescribed figure, and meets.
/// </param>
/// <param name="BelowMinimum">Less nitrite than product kept cold must have, or than pumped bacon is prescribed.</param>
/// <param name="Findings">Why it does not meet or is below the minimum; empty where all is well.</param>
/// <param name="Notes">To know, and not held against it.</param>
/// <param name="Working">The arithmetic, a line a step, as a hand would write it.</param>
public sealed record CureCheck(
    CureRule Rule,
    decimal NitritePpm,
    decimal NitratePpm,
    bool Meets,
    bool BelowMinimum,
    IReadOnlyList<Finding> Findings,
    IReadOnlyList<Finding> Notes,
    IReadOnlyList<string> Working)
{
    /// <summary>"155.90 ppm": as a person reads it.</summary>
    public string NitriteText => PpmText.Print(NitritePpm, Rule.Nitrite, Rule.Least);

    /// <inheritdoc cref="NitriteText"/>
    public string NitrateText => PpmText.Print(NitratePpm, Rule.Nitrate);
}
