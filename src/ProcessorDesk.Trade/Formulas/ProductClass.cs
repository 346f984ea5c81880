namespace ProcessorDesk.Trade.Formulas;

/// <summary>The kinds of product that have rules of their own.</summary>
public enum ProductClass
{
    /// <summary>Ground beef, chopped beef and hamburger.</summary>
    GroundBeef = 1,
    FreshPorkSausage = 2,
    FreshBeefSausage = 3,
    BreakfastSausage = 4,
    ItalianSausage = 5,

    /// <summary>Any other sausage that is not cooked.</summary>
    UncookedSausage = 6,

    /// <summary>Cooked sausage other than frankfurter and bologna.</summary>
    CookedSausage = 7,

    /// <summary>Frankfurter, bologna and their like.</summary>
    Frankfurter = 8,
}
