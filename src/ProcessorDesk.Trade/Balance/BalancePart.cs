namespace ProcessorDesk.Trade.Balance;

/// <summary>Where a part of an animal's weight went.</summary>
public enum BalancePart
{
    /// <summary>Hide, head, feet and what else is not hung.</summary>
    HideHeadFeet = 1,
    Hanging = 2,
    Cuts = 3,
    Lean = 4,
    Fat = 5,
    Bone = 6,

    /// <summary>Trimmed away: bloodshot, dirty, spoiled.</summary>
    Discard = 7,

    /// <summary>Lost to the air while hanging.</summary>
    Shrink = 8,

    /// <summary>Ran off in thawing and standing; below zero where ice or wash water came in.</summary>
    ThawAndDrip = 9,

    /// <summary>What stays in grinder and stuffer.</summary>
    LeftInMachines = 10,

    /// <summary>Given back as it came: antlers, cape, heart.</summary>
    GivenBack = 11,

    /// <summary>A side or quarter weighed apart, which goes on in a balance of its own.</summary>
    SideOrQuarter = 12,

    /// <summary>Went into the mixer; its way goes on in the batch.</summary>
    IntoMix = 13,
}
