using System.Globalization;

namespace ProcessorDesk.Trade.Process;

/// <summary>Lengths of time in a process record. They are worked exactly, in ticks, and rounded once: to whole seconds from a minute on, to a tenth of a second below.</summary>
public static class ProcessTime
{
    private const long Tenth = TimeSpan.TicksPerSecond / 10;

    /// <summary>"1 h 30 min", "3 min 59 s", "54.4 s", "0 s".</summary>
    /// <param name="time">Zero or more; what is finer than a tenth of a second is cut off.</param>
    public static string Print(TimeSpan time)
    {
        List<string> parts = [];
        if (time.Ticks >= TimeSpan.TicksPerHour)
            parts.Add((time.Ticks / TimeSpan.TicksPerHour).ToString(CultureInfo.InvariantCulture) + " h");
        if (time.Minutes > 0)
            parts.Add(time.Minutes.ToString(CultureInfo.InvariantCulture) + " min");
        var seconds = time.Ticks % TimeSpan.TicksPerMinute / Tenth / 10m;
        if (seconds > 0 || parts.Count == 0)
            parts.Add(seconds.ToString("0.#", CultureInfo.InvariantCulture) + " s");
        return string.Join(' ', parts);
    }

    /// <summary>Down to the second, under a minute to its tenth: for time that has to be long enough.</summary>
    internal static TimeSpan Down(Ratio ticks)
    {
        // Every time a table asks for is in whole seconds from a minute on, so that what is cut off is never what was missing.
        var step = ticks < Ratio.Of(TimeSpan.TicksPerMinute, 1) && -ticks < Ratio.Of(TimeSpan.TicksPerMinute, 1) ? Tenth : TimeSpan.TicksPerSecond;
        return new((ticks / Ratio.Of(step, 1)).Down() * step);
    }

    /// <summary>Up to the second, under a minute to its tenth: for time that has to be short enough.</summary>
    internal static TimeSpan Up(Ratio ticks) => -Down(-ticks);

    internal static Ratio Ticks(this TimeSpan time) => Ratio.Of(time.Ticks, 1);
}
