namespace ProcessorDesk.Trade.Yields;

/// <summary>
/// The yield grade of a beef carcass: how much closely trimmed, boneless meat of the round, loin, rib and chuck it gives. 1 gives
/// the most, 5 the least. 2.50 + 2.50 × fat in + 0.20 × kidney, pelvic and heart fat % + 0.0038 × hot carcass lb − 0.32 × ribeye in².
/// </summary>
/// <remarks>
/// Source: 7 CFR 54.105, read in the published text (A); that grades under 1 and over 5 are called 1 and 5 is from memory (M).
/// An official grade is given by a federal grader alone; this is the shop's own reckoning.
/// </remarks>
public sealed record YieldGrade
{
    public const string Source = "7 CFR 54.105";
    public const string Mark = "A";

    private static readonly Ratio s_start = Ratio.FromDecimal(2.50m);
    private static readonly Ratio s_perInchOfFat = Ratio.FromDecimal(2.50m);
    private static readonly Ratio s_perPercentInside = Ratio.FromDecimal(0.20m);
    private static readonly Ratio s_perPound = Ratio.FromDecimal(0.0038m);
    private static readonly Ratio s_perSquareInch = Ratio.FromDecimal(0.32m);

    private YieldGrade(decimal fatInches, Proportion insideFat, Weight hotCarcass, decimal ribeyeSquareInches)
    {
        var pounds = ExactPounds.Of(hotCarcass);
        Calculated = s_start
            + s_perInchOfFat * Ratio.FromDecimal(fatInches)
            + s_perPercentInside * Ratio.FromDecimal(insideFat.Percent)
            + s_perPound * pounds
            - s_perSquareInch * Ratio.FromDecimal(ribeyeSquareInches);
        Grade = (int)long.Clamp(Calculated.Down(), 1, 5);
        Working =
        [
            "2.50 to start from",
            FormattableString.Invariant($"+ 2.50 × {fatInches:0.####} in of fat over the ribeye = {2.50m * fatInches:0.######}"),
            FormattableString.Invariant($"+ 0.20 × {insideFat.Percent:0.####} % kidney, pelvic and heart fat = {0.20m * insideFat.Percent:0.######}"),
            FormattableString.Invariant($"+ 0.0038 × {ExactPounds.Print(hotCarcass)} hot carcass = {(s_perPound * pounds).ToDecimal():0.######}"),
            FormattableString.Invariant($"− 0.32 × {ribeyeSquareInches:0.####} in² of ribeye = {0.32m * ribeyeSquareInches:0.######}"),
            FormattableString.Invariant($"together {Calculated.ToDecimal():0.######}; the fraction is dropped: yield grade {Grade}"),
        ];
    }

    /// <summary>By the equation, exactly; may lie under 1 or over 5.</summary>
    public Ratio Calculated { get; }

    /// <summary>The whole grade, 1 to 5: the fraction is dropped, never rounded.</summary>
    public int Grade { get; }

    /// <summary>The arithmetic, a line a step, as a hand would write it.</summary>
    public IReadOnlyList<string> Working { get; }

    /// <param name="fatInches">Fat over the ribeye at the 12th rib, in inches, adjusted as the grader does; zero or more.</param>
    /// <param name="insideFat">Kidney, pelvic and heart fat as a percent of the carcass.</param>
    /// <param name="hotCarcass">Hot carcass weight; above zero.</param>
    /// <param name="ribeyeSquareInches">Area of the ribeye at the 12th rib in square inches; above zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is outside its range.</exception>
    public static YieldGrade Of(decimal fatInches, Proportion insideFat, Weight hotCarcass, decimal ribeyeSquareInches)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(fatInches);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(insideFat, Proportion.Whole);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(hotCarcass.Milligrams, nameof(hotCarcass));
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(ribeyeSquareInches);
        return new YieldGrade(fatInches, insideFat, hotCarcass, ribeyeSquareInches);
    }
}
