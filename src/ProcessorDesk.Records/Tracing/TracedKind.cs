namespace ProcessorDesk.Records;

/// <summary>What a trace can start from. The numbers are stored.</summary>
public enum TracedKind
{
    Animal = 1,
    Job = 2,

    /// <summary>One filling of a lug.</summary>
    Lug = 3,
    Batch = 4,
    Box = 5,
    IngredientLot = 6,
}
