namespace ProcessorDesk.Trade.Process;

/// <summary>What a record says of a published rule, worst first, so that the least of several verdicts is theirs together.</summary>
/// <remarks>Neither word says more than the record does; that meat may be eaten is not for a record to say.</remarks>
public enum ProcessVerdict
{
    /// <summary>Not met, even if everything the record leaves open had been in its favour.</summary>
    DoesNotMeet = 1,

    /// <summary>The record leaves open what would decide it.</summary>
    NotShown = 2,

    /// <summary>Met by what the record shows, whatever it leaves open.</summary>
    Meets = 3,
}
