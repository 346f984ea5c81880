namespace ProcessorDesk.Trade.Deadlines;

/// <summary>The day a rule counts the keeping of a record from.</summary>
public enum RetentionStart
{
    /// <summary>31 December of the year the meat was handed over in.</summary>
    EndOfHandOverYear = 1,
    Received = 2,
    Processed = 3,

    /// <summary>The day the meat was released to its owner.</summary>
    HandedOver = 4,
}
