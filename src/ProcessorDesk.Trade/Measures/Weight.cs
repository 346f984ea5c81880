namespace ProcessorDesk.Trade;

/// <summary>A weight in whole milligrams.</summary>
/// <remarks>
/// Range: a signed 64-bit count of milligrams, the range of its database column (about 20 billion pounds either way);
/// a negative weight has meaning only in the balance of an animal. Granularity: one milligram, so that a figure keyed at
/// any division of a shop's scales reads back unchanged. Equality and order are those of the count. The default is zero.
/// Arithmetic that leaves the range throws <see cref="OverflowException"/>.
/// </remarks>
public readonly record struct Weight : IComparable<Weight>
{
    private Weight(long milligrams) => Milligrams = milligrams;

    /// <summary>Whole milligrams.</summary>
    public long Milligrams { get; private init; }

    public static Weight Zero => default;

    public bool IsZero => Milligrams == 0;

    public bool IsNegative => Milligrams < 0;

    public bool IsPositive => Milligrams > 0;

    /// <summary>Exact pounds, up to the precision of a decimal.</summary>
    public decimal Pounds => Milligrams / UnitFactors.MilligramsPerPound;

    public decimal Ounces => Milligrams / UnitFactors.MilligramsPerOunce;

    public decimal Grams => Milligrams / UnitFactors.MilligramsPerGram;

    public static Weight FromMilligrams(long milligrams) => new(milligrams);

    /// <summary>To the nearest milligram, halves away from zero.</summary>
    public static Weight FromPounds(decimal pounds) => From(pounds, WeightUnit.Pound);

    /// <inheritdoc cref="FromPounds"/>
    public static Weight FromOunces(decimal ounces) => From(ounces, WeightUnit.Ounce);

    /// <inheritdoc cref="FromPounds"/>
    public static Weight FromGrams(decimal grams) => From(grams, WeightUnit.Gram);

    /// <inheritdoc cref="FromPounds"/>
    public static Weight From(decimal amount, WeightUnit unit) =>
        new(Rounding.ToLong(amount * UnitFactors.MilligramsPer(unit)));

    /// <summary>The weight as a figure in the unit, unrounded.</summary>
    public decimal In(WeightUnit unit) => Milligrams / UnitFactors.MilligramsPer(unit);

    public static Weight operator +(Weight left, Weight right) => new(left.Milligrams + right.Milligrams);

    public static Weight operator -(Weight left, Weight right) => new(left.Milligrams - right.Milligrams);

    public static Weight operator -(Weight weight) => new(-weight.Milligrams);

    public static bool operator <(Weight left, Weight right) => left.Milligrams < right.Milligrams;

    public static bool operator >(Weight left, Weight right) => left.Milligrams > right.Milligrams;

    public static bool operator <=(Weight left, Weight right) => left.Milligrams <= right.Milligrams;

    public static bool operator >=(Weight left, Weight right) => left.Milligrams >= right.Milligrams;

    public static Weight Min(Weight left, Weight right) => left < right ? left : right;

    public static Weight Max(Weight left, Weight right) => left > right ? left : right;

    public int CompareTo(Weight other) => Milligrams.CompareTo(other.Milligrams);

    /// <summary>Pounds with four decimals, for a debugger; people are shown <see cref="ScaleDivision.Print"/>.</summary>
    public override string ToString() => FormattableString.Invariant($"{Pounds:0.0000} lb");
}
