using ProcessorDesk.Trade.Curing;

namespace ProcessorDesk.Trade.Formulas;

/// <summary>A formula worked out for a meat block.</summary>
/// <param name="Lean">The owner's lean; with the added fat it is the meat block to the milligram.</param>
/// <param name="Pieces">Casings and the like for the green weight as the formula asks for it.</param>
/// <param name="Green">The meat block and every line.</param>
/// <param name="Cure">The check of the cure as scaled; null where neither the product is cured nor a line holds cure.</param>
public sealed record ScaledFormula(
    Formula Formula,
    Weight MeatBlock,
    Weight Lean,
    Weight AddedFat,
    IReadOnlyList<ScaledLine> Lines,
    IReadOnlyList<ScaledPieces> Pieces,
    Weight Green,
    CureCheck? Cure);
