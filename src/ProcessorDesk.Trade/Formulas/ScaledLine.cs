namespace ProcessorDesk.Trade.Formulas;

/// <summary>One line of a formula worked out for a meat block.</summary>
/// <param name="Milligrams">Exactly what the formula asks for, before any rounding.</param>
/// <param name="Amount">On the small scale's division; a line that holds cure is rounded down.</param>
/// <param name="Grams">"1,814.4 g": the amount as the small scale shows it.</param>
/// <param name="PoundsAndOunces">"4 lb 0.00 oz", for a hand without that scale; rounded the same way from the exact amount.</param>
public sealed record ScaledLine(FormulaLine Line, Ratio Milligrams, Weight Amount, string Grams, string PoundsAndOunces)
{
    /// <summary>
    /// The line on another scale, in grams, ounces or pounds: to its nearest division, halves away from zero, but down where the
    /// line holds cure, so that a formula inside the limits stays inside them on any scale.
    /// </summary>
    public Weight On(ScaleDivision scale) => On(scale, Milligrams, Line.HoldsCure || Line.IsCure);

    internal static Weight On(ScaleDivision scale, Ratio milligrams, bool isCure)
    {
        var count = milligrams / KeyedFigure.MilligramsPerStep(scale);
        return scale.FromCount(isCure ? count.Down() : count.Nearest());
    }
}
