using System.Globalization;

namespace ProcessorDesk.Trade;

/// <summary>The smallest step a scale shows: a unit and a step in millionths of that unit (0.01 lb, 0.1 g).</summary>
/// <remarks>
/// Range: 0.0001 to 1,000 of the unit, and one milligram, or two or more: finer figures would not come back from whole
/// milligrams. Granularity: a millionth of the unit, so that every decimal division is exact.
/// Equality: same unit and step (0.5 kg is not 500 g: they print differently). Not ordered. The default is not a
/// division; using it throws <see cref="InvalidOperationException"/>. Weights round to the nearest division, halves away
/// from zero, unless the member says "down".
/// </remarks>
public readonly record struct ScaleDivision
{
    private const decimal Million = 1_000_000m;

    /// <summary>From here on the rounding to whole milligrams is small beside half a division.</summary>
    private const int ClearOfMilligrams = 5;

    private ScaleDivision(WeightUnit unit, int stepMillionths) => (Unit, StepMillionths) = (unit, stepMillionths);

    public WeightUnit Unit { get; private init; }

    /// <summary>The step in millionths of the unit.</summary>
    public int StepMillionths { get; private init; }

    public static ScaleDivision HundredthPound => Of(WeightUnit.Pound, 0.01m);

    public static ScaleDivision TenthGram => Of(WeightUnit.Gram, 0.1m);

    /// <summary>A division of <paramref name="step"/> of the unit.</summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The step is under 0.0001, over 1,000, finer than a millionth, or too fine for whole milligrams.
    /// </exception>
    public static ScaleDivision Of(WeightUnit unit, decimal step)
    {
        var millionths = step * Million;
        if (step is < 0.0001m or > 1000m || millionths != decimal.Truncate(millionths))
            throw new ArgumentOutOfRangeException(nameof(step), step, "A scale division is 0.0001 to 1,000 of its unit.");
        if (step * UnitFactors.MilligramsPer(unit) is not (1m or >= 2m))
            throw new ArgumentOutOfRangeException(nameof(step), step, "A scale division is one milligram, or two or more.");
        return new ScaleDivision(unit, decimal.ToInt32(millionths));
    }

    /// <summary>The step as a figure in the unit.</summary>
    public decimal Step => Known().StepMillionths / Million;

    /// <summary>Exactly, in whole numbers: so many milligrams in so many divisions.</summary>
    internal (long Milligrams, long Divisions) Whole
    {
        get
        {
            var (milligrams, units) = UnitFactors.WholeMilligramsPer(Known().Unit);
            return (milligrams * StepMillionths, units * (long)Million);
        }
    }

    /// <summary>Decimals of the printed figure: dividing a decimal leaves no zeros at its end.</summary>
    private int Decimals => Step.Scale;

    /// <summary>
    /// Divisions nearest to the weight, halves away from zero. A half counts as a half although keeping it in whole
    /// milligrams may have cut it: 0.25 lb is one division of 0.5 lb.
    /// </summary>
    public long CountOf(Weight weight)
    {
        var (milligrams, divisions) = Whole;
        var size = Int128.Abs(weight.Milligrams);
        var nearest = Rounding.Divide(size * divisions, milligrams);
        var count = LeastSizeOf(nearest + 1) <= size ? nearest + 1 : nearest;
        return (long)(weight.IsNegative ? -count : count);
    }

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
    public Weight FromCount(long count)
    {
        var (milligrams, divisions) = Whole;
        return Weight.FromMilligrams((long)Rounding.Divide(Math.BigMul(count, milligrams), divisions));
    }

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
    /// Splits a weight by shares so that the parts add up both in milligrams and as printed: counts of divisions by
    /// largest remainder, turned into weights by <see cref="Parts"/>.
    /// </summary>
    /// <param name="total">Zero or more.</param>
    /// <param name="shares">Zero or more each, not all zero; only their proportion matters.</param>
    public IReadOnlyList<Weight> Split(Weight total, IReadOnlyList<long> shares) =>
        Parts(total, LargestRemainder.Split(CountOf(total), shares));

    /// <summary>
    /// Parts of a weight for given counts of divisions: each the difference of two cumulative roundings, so that each
    /// prints as its own count and together they are the weight to the milligram. What the weight has beside whole
    /// divisions goes to the last part that is not nothing, or, where that part would then print otherwise, the rest of
    /// it to the part before. No part is below zero.
    /// </summary>
    /// <param name="total">Zero or more.</param>
    /// <param name="counts">Zero or more each; they sum to the weight's own count.</param>
    public IReadOnlyList<Weight> Parts(Weight total, IReadOnlyList<long> counts)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(total.Milligrams);
        if (counts.Any(count => count < 0) || counts.Sum() != CountOf(total))
            throw new ArgumentException("The counts are zero or more and sum to the weight.", nameof(counts));
        var parts = new Weight[counts.Count];
        var (cumulative, before) = (0L, Weight.Zero);
        for (var i = 0; i < parts.Length; i++)
        {
            cumulative += counts[i];
            var upTo = FromCount(cumulative);
            (parts[i], before) = (upTo - before, upTo);
        }

        var left = total - before;
        for (var i = parts.Length - 1; i >= 0 && !left.IsZero; i--)
        {
            if (counts[i] == 0 && cumulative > 0)
                continue;
            var filled = Weight.Max(LeastOf(counts[i]), Weight.Min(MostOf(counts[i]), parts[i] + left));
            (left, parts[i]) = (left - (filled - parts[i]), filled);
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

    private Weight LeastOf(long count) => count == 0 ? Weight.Zero : Weight.FromMilligrams((long)LeastSizeOf(count));

    private Weight MostOf(long count) => Weight.FromMilligrams((long)LeastSizeOf(count + 1) - 1);

    /// <summary>The least milligrams that count as so many divisions, one or more: half a division under them.</summary>
    private Int128 LeastSizeOf(Int128 count)
    {
        var (milligrams, divisions) = Whole;
        var half = (count * 2 - 1) * milligrams;
        return milligrams >= ClearOfMilligrams * divisions
            ? Rounding.Divide(half, 2 * divisions)
            : -Rounding.Floor(-half, 2 * divisions);
    }

    private ScaleDivision Known() =>
        StepMillionths > 0 ? this : throw new InvalidOperationException("This scale division was never set.");
}
