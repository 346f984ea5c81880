namespace ProcessorDesk.Trade.Formulas;

/// <summary>One addition to the meat block.</summary>
/// <param name="OfMeatBlock">Its weight as an exact part of the meat block; zero or more.</param>
/// <param name="Nitrite">Nitrite in it as its maker states; zero is a statement, and blank never gets here.</param>
/// <param name="Nitrate">Nitrate in it, likewise.</param>
/// <param name="IsCure">It is weighed in as a cure; a seasoning may hold cure without being one.</param>
public sealed record FormulaLine(string Name, Ratio OfMeatBlock, Proportion Nitrite, Proportion Nitrate, bool IsCure)
{
    /// <summary>There is nitrite or nitrate in it, whatever it is called.</summary>
    public bool HoldsCure => !Nitrite.IsZero || !Nitrate.IsZero;

    /// <summary>An addition without cure, in percent of the meat block.</summary>
    public static FormulaLine OfPercent(string name, decimal percentOfBlock) =>
        new(name, PercentOfBlock(percentOfBlock), Proportion.Zero, Proportion.Zero, false);

    /// <summary>An addition without cure, in ounces to 100 lb of meat block.</summary>
    public static FormulaLine OfOunces(string name, decimal ouncesPer100Pounds) =>
        new(name, OuncesPer100Pounds(ouncesPer100Pounds), Proportion.Zero, Proportion.Zero, false);

    /// <summary>A cure, as a part of the meat block.</summary>
    public static FormulaLine OfCure(string name, Ratio ofMeatBlock, Proportion nitrite, Proportion nitrate) =>
        new(name, ofMeatBlock, nitrite, nitrate, true);

    /// <summary>2 for 2 % of the meat block: exactly 1/50.</summary>
    public static Ratio PercentOfBlock(decimal percent) => Ratio.FromDecimal(percent) / Ratio.Of(100, 1);

    /// <summary>4 for 4 oz to 100 lb of meat block: exactly 1/400.</summary>
    public static Ratio OuncesPer100Pounds(decimal ounces) =>
        Ratio.FromDecimal(ounces) / Ratio.Of(100 * UnitFactors.OuncesPerPound, 1);

    /// <summary>Ounces to any weight of meat block, as recipes print them: 1 and 25 lb is exactly 1/400.</summary>
    public static Ratio OuncesPerPounds(decimal ounces, decimal pounds) =>
        Ratio.FromDecimal(ounces) / (Ratio.FromDecimal(pounds) * Ratio.Of(UnitFactors.OuncesPerPound, 1));
}
