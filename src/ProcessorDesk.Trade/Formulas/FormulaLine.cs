using ProcessorDesk.Trade.Curing;

namespace ProcessorDesk.Trade.Formulas;

/// <summary>One addition to the meat block.</summary>
/// <param name="OfMeatBlock">Its weight as an exact part of lean and added fat; zero or more.</param>
/// <param name="Nitrite">Nitrite in it as its maker states; zero is a statement, and blank never gets here.</param>
/// <param name="Nitrate">Nitrate in it, likewise.</param>
/// <param name="IsCure">It is weighed in as a cure; a seasoning may hold cure without being one.</param>
public sealed record FormulaLine(string Name, Ratio OfMeatBlock, Proportion Nitrite, Proportion Nitrate, bool IsCure)
{
    /// <summary>Salt in it: 100 % of salt; of pink curing salt what is neither nitrite nor nitrate. Stated, never assumed.</summary>
    public Proportion Salt { get; init; }

    /// <summary>Fat in it.</summary>
    public Proportion Fat { get; init; }

    /// <summary>Water or ice that is added with it: 100 % of water.</summary>
    public Proportion Water { get; init; }

    public Additive Additive { get; init; }

    /// <summary>What it is where it speeds the cure up; null for all else.</summary>
    public AcceleratorKind? Accelerator { get; init; }

    /// <summary>It counts as meat in the check of the cure, as bacon ends do; its amount is a part of lean and added fat all the same.</summary>
    public bool InMeatBlock { get; init; }

    /// <summary>What a pound of it costs; null where nobody said.</summary>
    public PricePerPound? Price { get; init; }

    /// <summary>There is nitrite or nitrate in it, whatever it is called.</summary>
    public bool HoldsCure => !Nitrite.IsZero || !Nitrate.IsZero;

    /// <summary>All that is stated to be in it; more than the whole is impossible.</summary>
    public Proportion Stated => Nitrite + Nitrate + Salt + Fat + Water;

    /// <summary>An addition without cure, in percent of the meat block.</summary>
    public static FormulaLine OfPercent(string name, decimal percentOfBlock) => Of(name, percentOfBlock, FormulaBasis.PercentOfBlock);

    /// <summary>An addition without cure, in ounces to 100 lb of meat block.</summary>
    public static FormulaLine OfOunces(string name, decimal ouncesPer100Pounds) => Of(name, ouncesPer100Pounds, FormulaBasis.OuncesPer100Pounds);

    /// <summary>An addition without cure, as recipes write it.</summary>
    public static FormulaLine Of(string name, decimal amount, FormulaBasis basis) => new(name, Part(amount, basis), Proportion.Zero, Proportion.Zero, false);

    /// <summary>A cure, as a part of the meat block.</summary>
    public static FormulaLine OfCure(string name, Ratio ofMeatBlock, Proportion nitrite, Proportion nitrate) =>
        new(name, ofMeatBlock, nitrite, nitrate, true);

    /// <summary>The part of the meat block an amount means, exactly: 1 oz to 25 lb and 4 oz to 100 lb are both 1/400.</summary>
    public static Ratio Part(decimal amount, FormulaBasis basis) => basis switch
    {
        FormulaBasis.PercentOfBlock => Ratio.FromDecimal(amount) / Ratio.Of(100, 1),
        FormulaBasis.OuncesPer100Pounds => OuncesPerPounds(amount, 100m),
        FormulaBasis.OuncesPer25Pounds => OuncesPerPounds(amount, 25m),
        FormulaBasis.GramsPerKilogram => Ratio.FromDecimal(amount) / Ratio.Of(1000, 1),
    };

    /// <summary>4 for 4 oz to 100 lb of meat block: exactly 1/400.</summary>
    public static Ratio OuncesPer100Pounds(decimal ounces) => Part(ounces, FormulaBasis.OuncesPer100Pounds);

    /// <summary>Ounces to any weight of meat block, as recipes print them: 1 and 25 lb is exactly 1/400.</summary>
    public static Ratio OuncesPerPounds(decimal ounces, decimal pounds) =>
        Ratio.FromDecimal(ounces) / (Ratio.FromDecimal(pounds) * Ratio.Of(UnitFactors.OuncesPerPound, 1));
}
