using ProcessorDesk.Trade.Curing;

namespace ProcessorDesk.Trade.Formulas;

/// <summary>Works a formula out for a meat block.</summary>
public static class FormulaScaling
{
    /// <summary>The division of the pounds-and-ounces text.</summary>
    public static ScaleDivision OunceDivision { get; } = ScaleDivision.Of(WeightUnit.Ounce, 0.01m);

    /// <summary>
    /// Each line to the nearest of the small scale, halves away from zero, but one that holds cure down: a formula inside the
    /// limits stays inside them. Whether it is inside is in <see cref="ScaledFormula.Cure"/>.
    /// </summary>
    /// <param name="meatBlock">Zero or more.</param>
    /// <param name="small">The small scale's division.</param>
    /// <exception cref="ArgumentOutOfRangeException">The meat block is below zero.</exception>
    public static ScaledFormula Scale(Formula formula, Weight meatBlock, ScaleDivision small)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(meatBlock, Weight.Zero);
        ScaledLine[] lines = [.. formula.Lines.Select(line => Scale(line, meatBlock, small))];
        var lean = formula.LeanShare.ToRatio().Times(meatBlock);
        var cured = formula.IsCured || formula.Lines.Any(line => line.HoldsCure);
        return new ScaledFormula(
            formula,
            meatBlock,
            lean,
            meatBlock - lean,
            lines,
            lines.Aggregate(meatBlock, (sum, line) => sum + line.Amount),
            cured ? ComminutedCure.Check(meatBlock, Cures(lines)) : null);
    }

    private static ScaledLine Scale(FormulaLine line, Weight meatBlock, ScaleDivision small)
    {
        var (amount, ounces) = line.IsCure || line.HoldsCure
            ? (Portion.Down(meatBlock, line.OfMeatBlock, small), Portion.Down(meatBlock, line.OfMeatBlock, OunceDivision))
            : (Portion.Nearest(meatBlock, line.OfMeatBlock, small), Portion.Nearest(meatBlock, line.OfMeatBlock, OunceDivision));
        return new ScaledLine(line, amount, small.Print(amount), WeightText.PoundsAndOunces(ounces, OunceDivision));
    }

    private static CureAmount[] Cures(IEnumerable<ScaledLine> lines) =>
        [.. lines.Where(line => line.Line.HoldsCure).Select(line => new CureAmount(line.Line.Name, line.Amount, line.Line.Nitrite, line.Line.Nitrate))];
}
