using ProcessorDesk.Paper.Drawing;

namespace ProcessorDesk.Paper;

/// <summary>Where a moment and a temperature stand in the plot of a chart, and the moments and temperatures its grid is drawn at.</summary>
internal sealed class ProbeChartScale
{
    private const int MostMoments = 6;
    private const int MostDegrees = 6;

    private static readonly int[] s_minutes = [5, 10, 15, 30, 60, 120, 180, 240, 360, 720, 1440, 2880, 7200, 14400];
    private static readonly int[] s_degrees = [5, 10, 20, 40, 50, 100, 200];

    private readonly Box _plot;
    private readonly DateTimeOffset _from;
    private readonly double _ticks;
    private readonly decimal _low;
    private readonly decimal _high;

    public ProbeChartScale(ProbeChart chart, Box plot)
    {
        _plot = plot;
        var (from, to) = chart.Span;
        // A limit that ends after the last reading is still seen.
        to = chart.Marks.Select(mark => mark.To ?? to).Append(to).Max();
        if (to == from)
            to = from.AddMinutes(s_minutes[0]);
        (_from, _ticks) = (from, (to - from).Ticks);
        var degrees = chart.Probes.SelectMany(probe => probe.Points).Select(point => point.Degrees).Concat(chart.Marks.Select(mark => mark.Degrees)).ToList();
        var step = s_degrees.FirstOrDefault(one => (degrees.Max() - degrees.Min()) / one <= MostDegrees, s_degrees[^1]);
        _low = Math.Floor((degrees.Min() - 1) / step) * step;
        _high = Math.Ceiling((degrees.Max() + 1) / step) * step;
        Degrees = [.. Enumerable.Range(0, (int)((_high - _low) / step) + 1).Select(i => _low + i * step)];
        Moments = [.. Whole(from, to)];
    }

    public IReadOnlyList<decimal> Degrees { get; }

    public IReadOnlyList<DateTimeOffset> Moments { get; }

    public double X(DateTimeOffset at) => _plot.X + (at - _from).Ticks / _ticks * _plot.Width;

    public double Y(decimal degrees) => _plot.Bottom - (double)((degrees - _low) / (_high - _low)) * _plot.Height;

    /// <summary>Whole hours, or parts of one, by the shop's clock.</summary>
    private static IEnumerable<DateTimeOffset> Whole(DateTimeOffset from, DateTimeOffset to)
    {
        var minutes = s_minutes.FirstOrDefault(one => (to - from).TotalMinutes / one <= MostMoments, s_minutes[^1]);
        var step = TimeSpan.FromMinutes(minutes).Ticks;
        var midnight = new DateTimeOffset(from.Date, from.Offset);
        for (var at = midnight.AddTicks((from - midnight).Ticks / step * step); at <= to; at = at.AddTicks(step))
        {
            if (at >= from)
                yield return at;
        }
    }
}
