namespace ProcessorDesk.Trade.Curing;

/// <summary>What a check of the cure found.</summary>
/// <param name="NitritePpm">Ingoing nitrite on the meat block, to ten decimals.</param>
/// <param name="NitratePpm">Ingoing nitrate on the meat block, to ten decimals.</param>
/// <param name="Meets">There is a cure and neither limit is passed. Says nothing about <paramref name="BelowMinimum"/>.</param>
/// <param name="BelowMinimum">Less nitrite than product that is kept cold must have.</param>
/// <param name="Findings">Why it does not meet or is below the minimum; empty where all is well.</param>
/// <param name="Working">The arithmetic, a line a step, as a hand would write it.</param>
public sealed record CureCheck(
    decimal NitritePpm,
    decimal NitratePpm,
    bool Meets,
    bool BelowMinimum,
    IReadOnlyList<Finding> Findings,
    IReadOnlyList<string> Working)
{
    /// <summary>"155.90 ppm": as a person reads it.</summary>
    public string NitriteText => PpmText.Print(NitritePpm, CureLimits.ComminutedNitrite, CureLimits.KeepRefrigeratedLeast);

    /// <inheritdoc cref="NitriteText"/>
    public string NitrateText => PpmText.Print(NitratePpm, CureLimits.ComminutedNitrate);
}
