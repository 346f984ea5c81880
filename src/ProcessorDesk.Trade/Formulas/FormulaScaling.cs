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
    /// <param name="small">The small scale's division, in any unit.</param>
    /// <exception cref="ArgumentOutOfRangeException">The meat block is below zero, or a piece holds nothing.</exception>
    public static ScaledFormula Scale(Formula formula, Weight meatBlock, ScaleDivision small)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(meatBlock, Weight.Zero);
        var block = KeyedFigure.InMilligrams(meatBlock, WeightUnit.Pound);
        ScaledLine[] lines = [.. formula.Lines.Select(line => Scale(line, block * line.OfMeatBlock, small))];
        var green = block * (Ratio.One + formula.Additions);
        var lean = formula.LeanShare.ToRatio().Times(meatBlock);
        var cured = formula.IsCured || formula.Lines.Any(line => line.HoldsCure);
        return new ScaledFormula(
            formula,
            meatBlock,
            lean,
            meatBlock - lean,
            lines,
            [.. formula.Pieces.Select(piece => new ScaledPieces(piece, piece.CountFor(green)))],
            lines.Aggregate(meatBlock, (sum, line) => sum + line.Amount),
            cured ? ComminutedCure.Check(CureBase(meatBlock, lines), Cures(lines)) : null);
    }

    private static ScaledLine Scale(FormulaLine line, Ratio milligrams, ScaleDivision small)
    {
        var isCure = line.IsCure || line.HoldsCure;
        var amount = ScaledLine.On(small, milligrams, isCure);
        return new ScaledLine(
            line,
            milligrams,
            amount,
            small.Print(amount),
            WeightText.PoundsAndOunces(ScaledLine.On(OunceDivision, milligrams, isCure), OunceDivision));
    }

    private static Weight CureBase(Weight meatBlock, IEnumerable<ScaledLine> lines) =>
        lines.Where(line => line.Line.InMeatBlock).Aggregate(meatBlock, (sum, line) => sum + line.Amount);

    private static CureAmount[] Cures(IEnumerable<ScaledLine> lines) =>
        [.. lines.Where(line => line.Line.HoldsCure).Select(line => new CureAmount(line.Line.Name, line.Amount, line.Line.Nitrite, line.Line.Nitrate))];
}
