namespace ProcessorDesk.Trade.Yields;

/// <summary>Where a yield lies beside what is published.</summary>
public enum YieldVerdict
{
    InsideUsual = 1,

    /// <summary>Beyond the usual range, inside the widest one published: nothing to flag.</summary>
    InsideExtreme = 2,

    /// <summary>Beyond the extreme range published: worth a second look, never a reason to stop.</summary>
    Outside = 3,

    /// <summary>There is no published range to hold it against.</summary>
    NoRange = 4,

    /// <summary>Beyond the usual range where no extreme one is published: said, and nothing to flag.</summary>
    BeyondUsual = 5,
}
