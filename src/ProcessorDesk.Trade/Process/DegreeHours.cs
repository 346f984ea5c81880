namespace ProcessorDesk.Trade.Process;

/// <summary>Hours times degrees Fahrenheit above a base, exactly. What lies below the base counts for nothing and takes nothing away.</summary>
internal static class DegreeHours
{
    private static readonly Ratio s_perDegreeHour = Ratio.Of(100L * TimeSpan.TicksPerHour, 1);

    /// <summary>Held at one temperature.</summary>
    public static Ratio Of(Temperature held, TimeSpan time, Temperature above) =>
        Ratio.Of(Math.Max(0, held.HundredthsFahrenheit - above.HundredthsFahrenheit), 1) * time.Ticks() / s_perDegreeHour;

    /// <summary>What a probe shows up to a moment, gaps counting for nothing; and the highest it shows until then, its first entry at least.</summary>
    public static (IReadOnlyList<WarmTime> Times, Ratio HighestHundredths) Of(ProbeTrack track, Temperature above, Ratio until)
    {
        List<WarmTime> times = [];
        var highest = Ratio.Of(track.Entries.Where((entry, i) => i == 0 || Ratio.Of(entry.At, 1) <= until).Max(entry => entry.Hundredths), 1);
        foreach (var (before, after) in track.Lines().Where(line => Ratio.Of(line.Before.At, 1) < until))
        {
            var whole = Ratio.Of(after.At - before.At, 1);
            var time = Ratio.Of(after.At, 1) <= until ? whole : until - Ratio.Of(before.At, 1);
            var end = Ratio.Of(before.Hundredths, 1) + Ratio.Of(after.Hundredths - before.Hundredths, 1) * time / whole;
            var warm = Above(Ratio.Of(before.Hundredths - above.HundredthsFahrenheit, 1), end - Ratio.Of(above.HundredthsFahrenheit, 1)) * time;
            times.Add(new WarmTime(new Stretch(Ratio.Of(before.At, 1), Ratio.Of(before.At, 1) + time), warm / s_perDegreeHour));
            highest = end > highest ? end : highest;
        }

        return (times, highest);
    }

    /// <summary>The mean height above nothing of a straight line from one height to another.</summary>
    private static Ratio Above(Ratio from, Ratio to)
    {
        var (low, high) = from < to ? (from, to) : (to, from);
        return high.Sign <= 0 ? Ratio.Zero
            : low.Sign >= 0 ? (low + high) / Ratio.Of(2, 1)
            : high * high / (high - low) / Ratio.Of(2, 1);
    }
}
