namespace ProcessorDesk.Trade.Formulas;

/// <summary>What the rules for sausage and ground meat limit.</summary>
public enum ProductPart
{
    Fat = 1,
    AddedWater = 2,
    FatAndAddedWater = 3,

    /// <summary>Lean and added fat together.</summary>
    Meat = 4,

    /// <summary>All binders together, isolated soy protein and sodium caseinate among them.</summary>
    Binders = 5,
    IsolatedSoyProtein = 6,
    SodiumCaseinate = 7,
    Phosphate = 8,
}
