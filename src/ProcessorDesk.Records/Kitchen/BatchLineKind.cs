namespace ProcessorDesk.Records;

/// <summary>What a line of a batch's record is.</summary>
public enum BatchLineKind
{
    Step = 1,
    Reading = 2,
    Finished = 3,
    Ticket = 4,
    Share = 5,
    Mixed = 6,
    StuffedPieces = 7,
    LeftInMachines = 8,

    /// <summary>What a lug that was emptied into the batch lacks against its weigh-in.</summary>
    Drip = 9,

    /// <summary>A cure's second weighing.</summary>
    CureAgain = 10,
}
