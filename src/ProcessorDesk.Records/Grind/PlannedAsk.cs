using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;

namespace ProcessorDesk.Records;

/// <summary>One ask with the formula its product would be made by today. The formula's product and ingredients must have been loaded.</summary>
public sealed record PlannedAsk(FormulaVersion Formula, AskKind Kind, Weight Amount, Proportion Percent)
{
    public Product Product => Formula.Product;

    public GrindAsk ToTrade() => new(Product.Name, Kind, Amount, Percent, Formula.ToBlend());
}
