namespace ProcessorDesk.Records;

/// <summary>What was weighed. The numbers are stored.</summary>
public enum WeighInKind
{
    Arrival = 1,
    HotHanging = 2,
    ChilledHanging = 3,
    Quarters = 4,
    CutPack = 5,
    LeanTrim = 6,
    FatTrim = 7,
    Bone = 8,
    Discard = 9,
    FinishedProduct = 10,
    Box = 11,

    /// <summary>What of a batch stayed in grinder and stuffer.</summary>
    LeftInMachines = 12,
}
