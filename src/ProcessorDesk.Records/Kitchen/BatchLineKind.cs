namespace ProcessorDesk.Records;

/// <summary>What a line of a batch's record is.</summary>
public enum BatchLineKind
{
    Step = 1,
    Reading = 2,
    Finished = 3,
    Ticket = 4,
    Share = 5,
}
