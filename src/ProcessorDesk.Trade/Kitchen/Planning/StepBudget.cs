namespace ProcessorDesk.Trade.Kitchen.Planning;

/// <summary>How many steps a search may still take. Counted, not timed, so that the same question always gets the same answer.</summary>
internal sealed class StepBudget(long steps)
{
    private long _left = steps;

    public bool IsSpent => _left <= 0;

    /// <summary>Takes one step; false when there was none left.</summary>
    public bool Take() => _left-- > 0;
}
