namespace ProcessorDesk.Trade;

/// <summary>How an animal comes through the door. The numbers are stored; they never change.</summary>
public enum ArrivalState
{
    /// <summary>Not yet opened, or live weight.</summary>
    Whole = 1,

    /// <summary>Entrails out, head and hide on.</summary>
    FieldDressed = 2,

    /// <summary>Skinned, head and feet off: a hanging carcass.</summary>
    Skinned = 3,

    /// <summary>Quarters, bone in.</summary>
    Quarters = 4,
    FreshBoned = 5,
    FrozenBoned = 6,

    /// <summary>Left overnight and found; nobody has said.</summary>
    Unknown = 7,
}
