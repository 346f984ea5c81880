namespace ProcessorDesk.Records;

/// <summary>What can be done about a record that does not meet. The numbers are stored.</summary>
public enum DispositionKind
{
    /// <summary>Worked again, such as cooked once more, by guidance in writing.</summary>
    Reworked = 1,

    /// <summary>Somebody who knows judged this batch, in a letter.</summary>
    ExpertsLetter = 2,

    OwnersTold = 3,
}
