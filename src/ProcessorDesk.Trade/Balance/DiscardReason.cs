namespace ProcessorDesk.Trade.Balance;

/// <summary>Why meat was thrown away; an owner who asks is told.</summary>
public enum DiscardReason
{
    /// <summary>Bloodshot meat and a wide rim about the wound.</summary>
    ShotDamage = 1,
    Glands = 2,
    HairOrDirt = 3,

    /// <summary>Sour, slimy or green.</summary>
    Spoilage = 4,

    /// <summary>Bruised, by a fall or on the road.</summary>
    Bruises = 5,

    /// <summary>Dry or freezer-burnt rind of the hanging.</summary>
    DriedRind = 6,

    /// <summary>What a rule takes out: backbone and what belongs to it.</summary>
    ByRule = 7,

    /// <summary>Fell, or touched what it must not.</summary>
    Dropped = 8,
}
