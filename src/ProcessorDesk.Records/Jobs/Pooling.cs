namespace ProcessorDesk.Records;

/// <summary>Whether an owner agreed that the trim may be made up together with others'. The numbers are stored.</summary>
public enum Pooling
{
    Own = 1,
    Pooled = 2,
}
