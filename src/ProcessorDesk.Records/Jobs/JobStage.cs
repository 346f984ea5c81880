namespace ProcessorDesk.Records;

/// <summary>Where a job is, read from its facts; never stored.</summary>
public enum JobStage
{
    DetailsMissing,
    InCooler,
    OnTable,
    TrimWeighed,
    SplitAgreed,
    Made,
    Boxed,
    HandedOver,
}
