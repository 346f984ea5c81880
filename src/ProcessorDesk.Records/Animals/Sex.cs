namespace ProcessorDesk.Records;

/// <summary>The numbers are stored.</summary>
public enum Sex
{
    Unknown = 0,
    Male = 1,
    Female = 2,
}
