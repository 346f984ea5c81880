namespace ProcessorDesk.Records;

/// <summary>What is done to a batch after mixing. The numbers are stored.</summary>
public enum BatchStepKind
{
    RestStarted = 1,
    Stuffed = 2,
    HeatStarted = 3,
    ChillStarted = 4,
    Packed = 5,
}
