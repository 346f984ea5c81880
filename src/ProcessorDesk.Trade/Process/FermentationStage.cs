namespace ProcessorDesk.Trade.Process;

/// <summary>Time a fermenting product was held at one temperature of the chamber.</summary>
/// <param name="Chamber">The chamber's temperature.</param>
/// <param name="Lasted">Zero or more.</param>
public readonly record struct FermentationStage(Temperature Chamber, TimeSpan Lasted);
