namespace ProcessorDesk.Records;

/// <summary>What a hold may stop. The numbers are stored.</summary>
public enum HeldAct
{
    Cut = 1,
    BoneOut = 2,
    Grind = 3,
    Batch = 4,
    Release = 5,
    HandOver = 6,
    SendToLaboratory = 7,
}
