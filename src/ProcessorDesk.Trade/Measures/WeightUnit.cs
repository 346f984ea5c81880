namespace ProcessorDesk.Trade;

/// <summary>The units a shop's scale can show. The numbers are stored; they never change.</summary>
public enum WeightUnit
{
    Pound = 1,
    Ounce = 2,
    Kilogram = 3,
    Gram = 4,
}
