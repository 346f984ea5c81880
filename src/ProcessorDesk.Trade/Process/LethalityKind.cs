namespace ProcessorDesk.Trade.Process;

/// <summary>Which published table a product is cooked by. The numbers are stored; they never change.</summary>
public enum LethalityKind
{
    /// <summary>Meat, 6.5-log: the usual one.</summary>
    Meat65Log = 1,

    /// <summary>Meat, 7-log.</summary>
    Meat7Log = 2,

    /// <summary>Meat, 5-log; where the product does not keep unchilled it needs support of its own.</summary>
    Meat5Log = 3,

    /// <summary>Chicken, 7-log.</summary>
    Chicken = 4,

    /// <summary>Turkey, 7-log.</summary>
    Turkey = 5,

    /// <summary>Other, mixed or unknown poultry, 7-log: the longer of chicken and turkey.</summary>
    AnyPoultry = 6,

    /// <summary>Jerky, and whatever is dried before it is cooked: no table holds.</summary>
    DriedFirst = 7,
}
