namespace ProcessorDesk.Records;

/// <summary>Where a batch is, read from its facts; never stored.</summary>
public enum BatchStage
{
    Planned,
    Mixed,
    Released,
    Ended,
}
