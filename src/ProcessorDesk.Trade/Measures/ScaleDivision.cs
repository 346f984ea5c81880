using System.Globalization;

namespace ProcessorDesk.Trade;

/// <summary>The smallest step a scale shows: a unit and a step in millionths of that unit (0.01 lb, 0.1 g).</summary>
/// <remarks>
/// Range: 0.0001 to 1,000 of the unit. Granularity: a millionth of the unit, so that every decimal division is exact.
/// Equality: same unit and step (0.5 kg is not 500 g: they print differently). Not ordered. The default is not a
/// division; using it throws <see cref="InvalidOperationException"/>. Weights round to the nearest division, halves away
/// from zero, unless the member says "down".
/// </remarks>
public readonly record struct ScaleDivision
{
    private const decimal Million = 1_000_000m;

    private ScaleDivision(WeightUnit unit, int stepMillionths) => (Unit, StepMillionths) = (unit, stepMillionths);

    public WeightUnit Unit { get; private init; }

    /// <summary>The step in millionths of the unit.</summary>
    public int StepMillionths { get; private init; }

    public static ScaleDivision HundredthPound => Of(WeightUnit.Pound, 0.01m);

    public static ScaleDivision TenthGram => Of(WeightUnit.Gram, 0.1m);

    /// <summary>A division of <paramref name="step"/> of the unit.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The step is under 0.0001, over 1,000, or finer than a millionth.</exception>
    public static ScaleDivision Of(WeightUnit unit, decimal step)
    {
        var millionths = step * Million;
        if (step is < 0.0001m or > 1000m || millionths != decimal.Truncate(millionths))
            throw new ArgumentOutOfRangeException(nameof(step), step, "A scale division is 0.0001 to 1,000 of its unit.");
        return new ScaleDivision(unit, decimal.ToInt32(millionths));
    }

    /// <summary>The step as a figure in the unit.</summary>
    public decimal Step => Known().StepMillionths / Million;

    private decimal MilligramsPerStep => Step * UnitFactors.MilligramsPer(Unit);

    private int Decimals => (Step / 1.0000000000000000m).Scale;

    /// <summary>Divisions nearest to the weight.</summary>
    public long CountOf(Weight weight) => Rounding.ToLong(weight.Milligrams / MilligramsPerStep);

    /// <summary>
    /// Whole divisions in the weight, downwards. A weight that is itself the printed form of a count gives that count,
    /// although its milligrams may have been rounded down.
    /// </summary>
    public long CountDown(Weight weight)
    {
        var nearest = CountOf(weight);
        return FromCount(nearest) <= weight ? nearest : nearest - 1;
    }

    /// <summary>The weight of a count of divisions, to the nearest milligram.</summary>
    public Weight FromCount(long count) => Weight.FromMilligrams(Rounding.ToLong(count * MilligramsPerStep));

    public Weight Round(Weight weight) => FromCount(CountOf(weight));

    public Weight RoundDown(Weight weight) => FromCount(CountDown(weight));

    /// <summary>The sum as an owner adds the printed figures up: each weight in divisions, then added.</summary>
    public Weight Sum(IEnumerable<Weight> weights)
    {
        var count = 0L;
        foreach (var weight in weights)
            count += CountOf(weight);
        return FromCount(count);
    }

    /// <summary>
    /// Splits a weight by shares so that the parts add up both in milligrams and as printed: counts by largest
    /// remainder, each part the difference of two cumulative roundings, the last taking the total's own milligrams.
    /// </summary>
    /// <param name="total">Zero or more.</param>
    /// <param name="shares">Zero or more each, not all zero; only their proportion matters.</param>
    public IReadOnlyList<Weight> Split(Weight total, IReadOnlyList<long> shares) =>
        Parts(total, LargestRemainder.Split(CountOf(total), shares));

    /// <summary>Parts of a weight for given counts of divisions, which sum to the weight's own count.</summary>
    public IReadOnlyList<Weight> Parts(Weight total, IReadOnlyList<long> counts)
    {
        if (counts.Sum() != CountOf(total))
            throw new ArgumentException("The counts do not sum to the weight.", nameof(counts));
        var parts = new Weight[counts.Count];
        var (cumulative, before) = (0L, Weight.Zero);
        for (var i = 0; i < parts.Length; i++)
        {
            cumulative += counts[i];
            var upTo = i == parts.Length - 1 ? total : FromCount(cumulative);
            (parts[i], before) = (upTo - before, upTo);
        }

        return parts;
    }

    /// <summary>The figure as printed, without its unit: a decimal in the unit, on the division.</summary>
    public decimal Figure(Weight weight) => CountOf(weight) * Step;

    /// <summary>"12.40" for a division of 0.01 lb.</summary>
    public string PrintFigure(Weight weight) =>
        Figure(weight).ToString("N" + Decimals, CultureInfo.InvariantCulture);

    /// <summary>"12.40 lb" for a division of 0.01 lb.</summary>
    public string Print(Weight weight) => PrintFigure(weight) + " " + UnitFactors.Symbol(Unit);

    /// <summary>"0.01 lb".</summary>
    public override string ToString() =>
        StepMillionths == 0 ? "no division" : Step.ToString("0.######", CultureInfo.InvariantCulture) + " " + UnitFactors.Symbol(Unit);

    private ScaleDivision Known() =>
        StepMillionths > 0 ? this : throw new InvalidOperationException("This scale division was never set.");
}
