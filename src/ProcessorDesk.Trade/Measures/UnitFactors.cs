namespace ProcessorDesk.Trade;

/// <summary>
/// Exact conversion factors between units of weight.
/// Source: NIST Handbook 44, Appendix C (1 lb = 453.592 37 g exactly; 1 oz = 1/16 lb).
/// </summary>
public static class UnitFactors
{
    public const decimal MilligramsPerPound = MilligramsPerHundredPounds / 100m;
    public const decimal MilligramsPerOunce = MilligramsPerPound / OuncesPerPound;
    public const decimal MilligramsPerKilogram = 1_000_000m;
    public const decimal MilligramsPerGram = 1_000m;
    public const int OuncesPerPound = 16;

    private const long MilligramsPerHundredPounds = 45_359_237;

    /// <summary>Milligrams in one of the unit, exactly.</summary>
    public static decimal MilligramsPer(WeightUnit unit) => unit switch
    {
        WeightUnit.Pound => MilligramsPerPound,
        WeightUnit.Ounce => MilligramsPerOunce,
        WeightUnit.Kilogram => MilligramsPerKilogram,
        WeightUnit.Gram => MilligramsPerGram,
    };

    /// <summary>The same as whole numbers: so many milligrams in so many of the unit.</summary>
    internal static (long Milligrams, long Units) WholeMilligramsPer(WeightUnit unit) => unit switch
    {
        WeightUnit.Pound => (MilligramsPerHundredPounds, 100),
        WeightUnit.Ounce => (MilligramsPerHundredPounds, 100 * OuncesPerPound),
        WeightUnit.Kilogram => (1_000_000, 1),
        WeightUnit.Gram => (1_000, 1),
    };

    /// <summary>How the unit is written behind a figure.</summary>
    public static string Symbol(WeightUnit unit) => unit switch
    {
        WeightUnit.Pound => "lb",
        WeightUnit.Ounce => "oz",
        WeightUnit.Kilogram => "kg",
        WeightUnit.Gram => "g",
    };
}
