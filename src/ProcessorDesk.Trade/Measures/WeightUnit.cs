namespace ProcessorDesk.Trade;

/// <summary>The units a shop's scale can show.</summary>
public enum WeightUnit
{
    Pound,
    Ounce,
    Kilogram,
    Gram,
}
