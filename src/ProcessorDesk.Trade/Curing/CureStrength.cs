namespace ProcessorDesk.Trade.Curing;

/// <summary>
/// The stated strength of a cure. It is stated by the maker and never assumed; zero is a statement, blank is not. A percent
/// typed as a fraction, or the other way round, is off by a hundred and must be caught.
/// </summary>
public static class CureStrength
{
    /// <summary>Under this a strength above zero is doubted. From memory: the weakest premixed cures hold about 0.5 %.</summary>
    public static Proportion DoubtedUnder { get; } = Proportion.FromPercent(0.1m);

    /// <summary>A strength typed as a percent: 6.25, from 0 to 100.</summary>
    public static Parsed<Proportion> FromPercent(decimal percent) => percent is >= 0m and <= 100m
        ? Parsed<Proportion>.Good(Proportion.FromPercent(percent))
        : Parsed<Proportion>.Bad("A strength is 0 to 100 %.");

    /// <summary>A strength typed as a fraction: 0.0625, from 0 to 1. 6.25 is refused.</summary>
    public static Parsed<Proportion> FromFraction(decimal fraction) => fraction is >= 0m and <= 1m
        ? Parsed<Proportion>.Good(Proportion.FromPercent(fraction * 100m))
        : Parsed<Proportion>.Bad("A strength as a fraction is 0 to 1; write 6.25 % as 0.0625.");

    /// <summary>What is wrong with the strengths stated for one ingredient; null is one left blank.</summary>
    /// <returns>Findings on the fields "Nitrite" and "Nitrate"; empty where both are stated and possible.</returns>
    public static IReadOnlyList<Finding> Check(Proportion? nitrite, Proportion? nitrate)
    {
        var findings = new List<Finding>();
        if (nitrite is null)
            findings.Add(Blank("Nitrite"));
        if (nitrate is null)
            findings.Add(Blank("Nitrate"));
        var together = (nitrite ?? Proportion.Zero) + (nitrate ?? Proportion.Zero);
        if (together > Proportion.Whole)
            findings.Add(new Finding("Nitrite", "Nitrite and nitrate together are at most 100 % of the cure.", together.Print(), "100 %"));
        return findings;
    }

    /// <summary>What a person should look at again although it is possible; null where nothing is odd.</summary>
    public static Finding? Doubt(Proportion strength) => strength.IsZero || strength >= DoubtedUnder
        ? null
        : new Finding(
            "Nitrite",
            $"{strength.Print()} is very weak for a cure. Was a fraction typed for {(strength.Percent * 100m).ToString("0.####", System.Globalization.CultureInfo.InvariantCulture)} %?",
            strength.Print(),
            "usually " + DoubtedUnder.Print() + " and up");

    /// <summary>What is neither nitrite nor nitrate: the salt of a cure whose carrier is salt. Zero where the two are impossibly more than the whole.</summary>
    public static Proportion Rest(Proportion nitrite, Proportion nitrate) =>
        Proportion.FromPartsPerMillion(Math.Max(0, Proportion.Whole.PartsPerMillion - (nitrite + nitrate).PartsPerMillion));

    private static Finding Blank(string agent) =>
        new(agent, $"{agent} is not stated. Copy it from the maker's label; write 0 where there is none.");
}
