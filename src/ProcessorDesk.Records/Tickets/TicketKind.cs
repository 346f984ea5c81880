namespace ProcessorDesk.Records;

/// <summary>What a ticket is for. The numbers are stored.</summary>
public enum TicketKind
{
    /// <summary>The owner's claim on a job; the target is the job.</summary>
    Claim = 1,

    /// <summary>The target is the animal.</summary>
    Carcass = 2,

    /// <summary>The target is the part.</summary>
    Part = 3,

    /// <summary>A lug as it is filled now; the target is the filling.</summary>
    Filling = 4,
    Batch = 5,
    Box = 6,
}
