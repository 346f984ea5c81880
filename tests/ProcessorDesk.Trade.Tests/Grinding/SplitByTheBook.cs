using ProcessorDesk.Trade.Grinding;
using ProcessorDesk.Trade.Tests.Measures;

namespace ProcessorDesk.Trade.Tests.Grinding;

/// <summary>
/// The split as docs/arithmetic.md tells it, done again from the page in unbounded fractions, for the fast one to be held against.
/// It counts divisions and gives lean, fat, block, green and finished for each ask, and for the plain ground behind them.
/// </summary>
internal static class SplitByTheBook
{
    private static readonly WeightUnit[] s_units = [WeightUnit.Pound, WeightUnit.Ounce, WeightUnit.Kilogram, WeightUnit.Gram];

    public static List<long[]> Split(SplitCase grind)
    {
        var all = (long)(Whole(grind.Lean.Milligrams) / Step(grind.Division)).Nearest();
        var left = all;
        var rows = new long[grind.Asks.Count][];
        foreach (var rest in new[] { false, true })
        {
            for (var i = 0; i < rows.Length; i++)
            {
                if (grind.Asks[i].Kind == AskKind.Rest != rest)
                    continue;
                var lean = Lean(grind.Asks[i], all, left, grind.Division);
                rows[i] = Row(lean, grind.Asks[i].Blend);
                left -= lean;
            }
        }

        return left > 0 || grind.Asks.All(ask => ask.Kind != AskKind.Rest) ? [.. rows, Row(left, GrindBlend.Plain)] : [.. rows];
    }

    private static long Lean(GrindAsk ask, long all, long left, ScaleDivision division)
    {
        var blend = ask.Blend;
        var greenOfLean = (Whole(1) + Fraction.Of(blend.Additions)) / Part(blend.LeanShare);
        var step = Keyed(blend.Step, division);
        var smallest = Keyed(blend.SmallestRun, division);
        var wanted = ask.Kind switch
        {
            AskKind.OwnLean => Keyed(ask.Amount, division) * greenOfLean,
            AskKind.Finished => Keyed(ask.Amount, division) / (Whole(1) - Part(blend.Loss)),
            AskKind.Percent => Whole(all) * Part(ask.Percent) * greenOfLean,
            AskKind.Rest => Whole(left) * greenOfLean,
        };
        var green = InSteps(wanted);
        if ((green / greenOfLean).Nearest() > left)
            green = InSteps(Whole(left) * greenOfLean);
        return green.CompareTo(smallest) < 0 ? 0 : (long)(green / greenOfLean).Nearest();

        Fraction InSteps(Fraction mix) => step.Above.IsZero ? mix : new Fraction((mix / step).Down(), 1) * step;
    }

    private static long[] Row(long lean, GrindBlend blend)
    {
        var fat = (long)(Whole(lean) * (Whole(1) - Part(blend.LeanShare)) / Part(blend.LeanShare)).Nearest();
        var green = (long)(Whole(lean + fat) * (Whole(1) + Fraction.Of(blend.Additions))).Nearest();
        return [lean, fat, lean + fat, green, (long)(Whole(green) * (Whole(1) - Part(blend.Loss))).Nearest()];
    }

    /// <summary>The shortest decimal of three places at most that is kept as these milligrams, in divisions.</summary>
    private static Fraction Keyed(Weight weight, ScaleDivision division)
    {
        for (var places = 0; places <= 3 && !weight.IsZero; places++)
        {
            foreach (var unit in s_units.Prepend(division.Unit))
            {
                var figure = decimal.Round(weight.In(unit), places, MidpointRounding.AwayFromZero);
                if (Weight.From(figure, unit) == weight)
                    return Fraction.Of(figure) * Fraction.Of(UnitFactors.MilligramsPer(unit)) / Step(division);
            }
        }

        return Whole(weight.Milligrams) / Step(division);
    }

    private static Fraction Step(ScaleDivision division) =>
        Fraction.Of(division.Step) * Fraction.Of(UnitFactors.MilligramsPer(division.Unit));

    private static Fraction Whole(long count) => new(count, 1);

    private static Fraction Part(Proportion share) => new(share.PartsPerMillion, 1_000_000);
}
