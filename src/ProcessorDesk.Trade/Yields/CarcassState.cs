namespace ProcessorDesk.Trade.Yields;

/// <summary>What a weight is the weight of. A published ratio holds only between the states it was measured for.</summary>
public enum CarcassState
{
    /// <summary>The whole animal.</summary>
    Live = 1,

    /// <summary>Entrails out, head and hide on.</summary>
    FieldDressed = 2,

    /// <summary>Skinned, head and feet off; hot or chilled.</summary>
    Hanging = 3,

    /// <summary>Quarters, bone in.</summary>
    Quarters = 4,

    /// <summary>Trimmed lean meat without bone.</summary>
    Boneless = 5,

    /// <summary>Trimmed cuts with their bone.</summary>
    BoneIn = 6,

    /// <summary>What the owner takes home, as the shop usually cuts that species.</summary>
    TakeHome = 7,
}
