using ProcessorDesk.Trade.Curing;

namespace ProcessorDesk.Trade.Formulas;

/// <summary>One line of a formula worked out for a meat block.</summary>
/// <param name="Amount">On the small scale's division; a line that holds cure is rounded down.</param>
/// <param name="Grams">"1,814.4 g": the amount as the small scale shows it.</param>
/// <param name="PoundsAndOunces">"4 lb 0.00 oz", for a hand without that scale; rounded the same way from the exact amount.</param>
public sealed record ScaledLine(FormulaLine Line, Weight Amount, string Grams, string PoundsAndOunces);

/// <summary>A formula worked out for a meat block.</summary>
/// <param name="Lean">The owner's lean; with the added fat it is the meat block to the milligram.</param>
/// <param name="Green">The meat block and every line.</param>
/// <param name="Cure">The check of the cure as scaled; null where neither the product is cured nor a line holds cure.</param>
public sealed record ScaledFormula(
    Formula Formula,
    Weight MeatBlock,
    Weight Lean,
    Weight AddedFat,
    IReadOnlyList<ScaledLine> Lines,
    Weight Green,
    CureCheck? Cure);
