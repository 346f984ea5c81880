namespace ProcessorDesk.Trade.Formulas;

/// <summary>How recipes write an addition to the meat block.</summary>
public enum FormulaBasis
{
    /// <summary>2 is 2 % of the meat block.</summary>
    PercentOfBlock = 1,

    /// <summary>4 is 4 oz to 100 lb of meat block.</summary>
    OuncesPer100Pounds = 2,

    /// <summary>1 is 1 oz to 25 lb of meat block.</summary>
    OuncesPer25Pounds = 3,

    /// <summary>2.5 is 2.5 g to the kilogram of meat block.</summary>
    GramsPerKilogram = 4,
}
