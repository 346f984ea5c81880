namespace ProcessorDesk.Records;

/// <summary>What came of a call to an owner. The numbers are stored.</summary>
public enum CallOutcome
{
    /// <summary>The owner was told.</summary>
    Told = 1,
    MessageLeft = 2,
    NoAnswer = 3,
    WrongNumber = 4,
}
