namespace ProcessorDesk.Trade.Process;

/// <summary>A cooking record held against a published table.</summary>
/// <remarks>
/// A row is met when the total time with every probe at or above its temperature is at least its dwell; a row without dwell is met
/// when there was such a moment. A moment counts only where every probe of the record shows something: an entry, or the line between two
/// entries no further apart than the longest gap. Of two entries of one probe at one moment the lower counts. Lines are worked exactly;
/// the table is not filled in between its rows, so that 157.9 °F counts for the row of 157.
/// Not met, it "does not meet" if no row would be met even with everything that the record leaves open counted in favour: from its first
/// entry to its last, each moment at which a probe shows nothing taken as hot as the others let it be. Otherwise, and where there are
/// no readings, or all are of one moment, it is "not shown by the record".
/// </remarks>
public static class Lethality
{
    /// <param name="kind">Which table holds.</param>
    /// <param name="readings">The cooking, from the time the product goes in; in any order. Chilling is judged apart.</param>
    /// <param name="accuracy">How far the thermometer may be off, in degrees Fahrenheit, zero or more; taken off every reading for the row.</param>
    /// <param name="longestGap">Null for <see cref="LongestGap.Cooking"/>.</param>
    public static LethalityCheck Check(
        LethalityKind kind, IEnumerable<ProcessReading> readings, Temperature accuracy = default, TimeSpan? longestGap = null)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(accuracy.HundredthsFahrenheit);
        var tracks = ProbeTrack.Of(readings, longestGap ?? LongestGap.Cooking, entries => entries.Min());
        var comeUp = ComeUp.Of(tracks);
        if (LethalityTables.For(kind) is not { } table)
            return new LethalityCheck(ProcessVerdict.NotShown, null, null, Ratio.Zero, null, comeUp, [LethalityFindings.DriedFirst]);
        if (tracks.Count == 0)
            return new LethalityCheck(ProcessVerdict.NotShown, table, null, Ratio.Zero, null, comeUp, [LethalityFindings.NoReadings(table)]);

        var (from, to) = (tracks.Min(track => track.First), tracks.Max(track => track.Last));
        var rows = table.Rows.Select(row => new RowTime(row, tracks, from, to, row.At.HundredthsFahrenheit + accuracy.HundredthsFahrenheit)).ToList();
        var met = MostToSpare(rows.Where(row => row.IsMet));
        var row = met ?? MostToSpare(rows.Where(row => row.Shown.Total.Sign > 0));
        var verdict = met is not null ? ProcessVerdict.Meets
            : from == to || rows.Any(row => row.CouldBeMet) ? ProcessVerdict.NotShown
            : ProcessVerdict.DoesNotMeet;
        var shown = row?.Shown.Total ?? Ratio.Zero;
        var found = ProcessTime.Down(shown);
        return new LethalityCheck(
            verdict, table, row?.Row, shown / Ratio.Of(TimeSpan.TicksPerSecond, 1), row?.Coldest, comeUp, [.. LethalityFindings.Of(verdict, kind, table, row?.Row, found, accuracy), .. Some(comeUp.Finding)])
        {
            When = row?.Shown.Parts ?? [],
        };
    }

    /// <summary>The row with the greatest time shown less time asked for, be that below zero; the hotter of two alike.</summary>
    private static RowTime? MostToSpare(IEnumerable<RowTime> rows) => rows.Reverse().MaxBy(row => row.ToSpare);

    private static IEnumerable<Finding> Some(Finding? finding) => finding is null ? [] : [finding];

    /// <summary>What the record shows, and what it leaves possible, of one row.</summary>
    private sealed class RowTime(LethalityRow row, List<ProbeTrack> tracks, Ratio from, Ratio to, int hundredths)
    {
        public LethalityRow Row => row;

        public Stretches Shown { get; } = All(tracks.Select(track => track.AtOrAbove(hundredths)));

        /// <summary>The first of those with the least time.</summary>
        public int Coldest => tracks.MinBy(track => track.AtOrAbove(hundredths).Total)!.Probe;

        public bool IsMet => Suffices(Shown);

        public bool CouldBeMet => Suffices(All(tracks.Select(track => track.AtOrAbove(hundredths).Or(track.Gaps(from, to)))));

        public Ratio ToSpare => Shown.Total - row.Dwell.Ticks();

        private bool Suffices(Stretches hot) => !hot.IsEmpty && hot.Total >= row.Dwell.Ticks();

        private static Stretches All(IEnumerable<Stretches> probes) => probes.Aggregate((one, two) => one.And(two));
    }
}
