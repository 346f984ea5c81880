namespace ProcessorDesk.Records;

/// <summary>What a share is called. The numbers are stored.</summary>
public enum Portion
{
    Whole = 1,
    Side = 2,
    Quarter = 3,
    Part = 4,
}
