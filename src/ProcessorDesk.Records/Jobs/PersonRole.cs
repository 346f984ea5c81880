namespace ProcessorDesk.Records;

/// <summary>Who else stands around a job. A role with nobody in it is the owner's. The numbers are stored.</summary>
public enum PersonRole
{
    Hunter = 1,
    DroppedOff = 2,
    Payer = 3,
    Collector = 4,
}
