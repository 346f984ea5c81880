namespace ProcessorDesk.Trade.Deadlines;

/// <summary>The days of a job that keeping its records is counted from; null where that has not happened yet.</summary>
/// <param name="Received">When the animal came in.</param>
/// <param name="Processed">When the processing was done.</param>
/// <param name="HandedOver">When the last of it was handed over; the day of the transaction.</param>
public sealed record JobDays(DateOnly? Received, DateOnly? Processed, DateOnly? HandedOver)
{
    /// <summary>All on one day, as where only one is known.</summary>
    public static JobDays AllOn(DateOnly day) => new(day, day, day);
}
