namespace ProcessorDesk.Trade.Process;

/// <summary>
/// What one probe's entries show: each entry at its moment, and between two entries not further apart than the longest gap the
/// straight line from one to the other. Nothing before the first entry, after the last, or inside a gap.
/// </summary>
internal sealed class ProbeTrack
{
    private readonly List<TrackEntry> _entries;
    private readonly long _longestGap;

    private ProbeTrack(int probe, List<TrackEntry> entries, long longestGap) => (Probe, _entries, _longestGap) = (probe, entries, longestGap);

    public int Probe { get; }

    public IReadOnlyList<TrackEntry> Entries => _entries;

    public Ratio First => Ratio.Of(_entries[0].At, 1);

    public Ratio Last => Ratio.Of(_entries[^1].At, 1);

    /// <summary>The tracks of a record, a probe each, in the order of the probes' numbers.</summary>
    /// <param name="readings">In any order.</param>
    /// <param name="longestGap">Not below zero.</param>
    /// <param name="pick">Which of several entries of one probe at one moment counts: the one that does not help the verdict.</param>
    public static List<ProbeTrack> Of(IEnumerable<ProcessReading> readings, TimeSpan longestGap, Func<IEnumerable<int>, int> pick)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(longestGap, TimeSpan.Zero);
        return
        [
            .. from reading in readings
               group reading by reading.Probe into probe
               orderby probe.Key
               select new ProbeTrack(
                   probe.Key,
                   [
                       .. from reading in probe
                          group reading.Reading.HundredthsFahrenheit by reading.At.Ticks into moment
                          orderby moment.Key
                          select new TrackEntry(moment.Key, pick(moment)),
                   ],
                   longestGap.Ticks),
        ];
    }

    /// <summary>Between each two neighbours that are not further apart than the longest gap.</summary>
    public IEnumerable<(TrackEntry Before, TrackEntry After)> Lines() => Steps().Where(step => !IsGap(step));

    /// <summary>When it is shown at or above a temperature.</summary>
    public Stretches AtOrAbove(int hundredths) =>
        new(_entries.Where(entry => entry.Hundredths >= hundredths).Select(entry => new Stretch(Moment(entry), Moment(entry)))
            .Concat(Lines().SelectMany(line => Above(line, hundredths))));

    /// <summary>When it is shown at or below a temperature.</summary>
    public Stretches AtOrBelow(int hundredths) =>
        new ProbeTrack(Probe, [.. _entries.Select(entry => entry with { Hundredths = -entry.Hundredths })], _longestGap).AtOrAbove(-hundredths);

    /// <summary>When it shows nothing, inside its own entries.</summary>
    public Stretches Gaps() => new(Steps().Where(IsGap).Select(step => new Stretch(Moment(step.Before), Moment(step.After))));

    /// <summary>When it shows nothing, from one moment to another at or around its own first and last.</summary>
    public Stretches Gaps(Ratio from, Ratio to) =>
        Gaps().Or(new Stretches(((Stretch[])[new(from, First), new(Last, to)]).Where(end => end.From < end.To)));

    private static IEnumerable<Stretch> Above((TrackEntry Before, TrackEntry After) line, int hundredths)
    {
        var (before, after) = line;
        if (before.Hundredths >= hundredths && after.Hundredths >= hundredths)
            yield return new Stretch(Moment(before), Moment(after));
        else if (before.Hundredths >= hundredths)
            yield return new Stretch(Moment(before), Crossing(before, after, hundredths));
        else if (after.Hundredths >= hundredths)
            yield return new Stretch(Crossing(before, after, hundredths), Moment(after));
    }

    private static Ratio Crossing(TrackEntry before, TrackEntry after, int hundredths) =>
        Moment(before) + Ratio.Of(hundredths - before.Hundredths, after.Hundredths - before.Hundredths) * Ratio.Of(after.At - before.At, 1);

    private static Ratio Moment(TrackEntry entry) => Ratio.Of(entry.At, 1);

    private IEnumerable<(TrackEntry Before, TrackEntry After)> Steps() => _entries.Zip(_entries.Skip(1));

    private bool IsGap((TrackEntry Before, TrackEntry After) step) => step.After.At - step.Before.At > _longestGap;
}
