namespace ProcessorDesk.Trade.Pricing;

/// <summary>Days in the freezer that are charged for.</summary>
public static class StorageDays
{
    /// <summary>
    /// Nights from the day it was ready to the day it left, less the free ones; never below zero. Ready on the 1st with 14 free, it
    /// leaves free until the 15th and pays one day on the 16th.
    /// </summary>
    /// <param name="readyOn">When it could first be fetched.</param>
    /// <param name="leftOn">When it left; for what is still here, today.</param>
    /// <param name="free">Days that cost nothing; zero or more.</param>
    public static int Charged(DateOnly readyOn, DateOnly leftOn, int free)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(free);
        return Math.Max(0, leftOn.DayNumber - readyOn.DayNumber - free);
    }
}
