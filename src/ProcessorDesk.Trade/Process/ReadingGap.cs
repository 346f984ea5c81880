namespace ProcessorDesk.Trade.Process;

/// <summary>A time in which a probe shows nothing, between two of its readings that lie too far apart.</summary>
/// <param name="Probe">Which probe.</param>
/// <param name="From">The reading before it, in UTC.</param>
/// <param name="To">The reading after it.</param>
public sealed record ReadingGap(int Probe, DateTime From, DateTime To)
{
    /// <summary>The gaps of a record, in the order of the probes' numbers and of time.</summary>
    /// <param name="readings">In any order.</param>
    /// <param name="longestGap">What is longer counts for nothing; not below zero.</param>
    public static IReadOnlyList<ReadingGap> Of(IEnumerable<ProcessReading> readings, TimeSpan longestGap) =>
    [
        .. from track in ProbeTrack.Of(readings, longestGap, entries => entries.Min())
           from step in track.Entries.Zip(track.Entries.Skip(1))
           where step.Second.At - step.First.At > longestGap.Ticks
           select new ReadingGap(track.Probe, new DateTime(step.First.At, DateTimeKind.Utc), new DateTime(step.Second.At, DateTimeKind.Utc)),
    ];
}
