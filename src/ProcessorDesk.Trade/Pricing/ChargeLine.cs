namespace ProcessorDesk.Trade.Pricing;

/// <summary>One line of an invoice as it is printed: quantity times rate is the amount, by anybody's pocket calculator.</summary>
/// <param name="Text">What it is for.</param>
/// <param name="Quantity">The figure as printed, "92.75"; empty for a flat charge.</param>
/// <param name="Unit">"lb", "piece"; empty for a flat charge.</param>
/// <param name="Rate">"$1.25 / lb"; empty for a flat charge.</param>
/// <param name="Amount">Whole cents, rounded once; negative for a credit.</param>
/// <param name="Taxed">Whether tax is charged on it.</param>
/// <param name="Tax">Whole cents, rounded once on the line; zero where it is not taxed.</param>
public sealed record ChargeLine(string Text, string Quantity, string Unit, string Rate, Money Amount, bool Taxed, Money Tax);
