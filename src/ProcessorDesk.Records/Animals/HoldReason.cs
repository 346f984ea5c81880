namespace ProcessorDesk.Records;

/// <summary>Why something is on hold. The numbers are stored.</summary>
public enum HoldReason
{
    DiseaseTest = 1,
    DiseaseDetected = 2,
    MissingTag = 3,
    Dispute = 4,
    TooWarm = 5,
    CoolerFailed = 6,
    WrongMeatIn = 7,
    RecordIncomplete = 8,
    Other = 9,
}
