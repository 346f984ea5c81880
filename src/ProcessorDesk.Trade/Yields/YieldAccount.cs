namespace ProcessorDesk.Trade.Yields;

/// <summary>The yield statement: what came, what was made of it, and what could be expected.</summary>
/// <param name="Stages">Heads of the weight columns, from arrival to lean: "Field-dressed", "Hanging", "Lean".</param>
/// <param name="Animals">A row for each animal; a weight never taken is an empty text.</param>
/// <param name="Together">The sum of the rows; null for one animal.</param>
/// <param name="Expected">The forecast against what came out; null where no ratio is published.</param>
/// <param name="Verdict">"Inside the usual range."</param>
/// <param name="Way">Where the weight went; empty for no picture.</param>
public sealed record YieldAccount(
    IReadOnlyList<string> Stages,
    IReadOnlyList<YieldRow> Animals,
    YieldRow? Together,
    YieldRange? Expected,
    string Verdict,
    IReadOnlyList<WayStep> Way);

/// <summary>"White-tail deer, tag TX-0417" and its weights as printed, one for each stage.</summary>
public sealed record YieldRow(string Animal, IReadOnlyList<string> Weights);

/// <summary>A published range with the actual weight on it.</summary>
/// <param name="Words">"From 224.5 lb field-dressed: about 107.8 lb boneless, usually 102.4 to 113.1, at the extreme 91.6 to 123.9."</param>
/// <param name="Source">Who publishes it.</param>
/// <param name="Actual">What came out.</param>
/// <param name="ActualPrinted">The same as printed: "92.75 lb".</param>
/// <param name="Typical">The usual figure.</param>
/// <param name="UsualLow">Lower end of the usual range; null where only a figure is published.</param>
/// <param name="UsualHigh">Upper end.</param>
/// <param name="ExtremeLow">Lower end of the extreme range; null where none is published.</param>
/// <param name="ExtremeHigh">Upper end.</param>
public sealed record YieldRange(
    string Words,
    string Source,
    Weight Actual,
    string ActualPrinted,
    Weight Typical,
    Weight? UsualLow = null,
    Weight? UsualHigh = null,
    Weight? ExtremeLow = null,
    Weight? ExtremeHigh = null);
