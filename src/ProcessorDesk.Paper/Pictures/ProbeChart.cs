namespace ProcessorDesk.Paper;

/// <summary>The readings of one part of a process record, to be drawn: degrees Fahrenheit over time, a line for each probe.</summary>
/// <param name="Title">"Cooking, batch 31".</param>
/// <param name="Probes">Each with its readings in the order of time; at least one reading in all.</param>
/// <param name="Gaps">Times in which a probe shows nothing; they are shaded, and no line leads through them.</param>
/// <param name="Marks">The temperatures that decide.</param>
public sealed record ProbeChart(string Title, IReadOnlyList<ProbeChart.Probe> Probes, IReadOnlyList<ProbeChart.Gap> Gaps, IReadOnlyList<ProbeChart.Mark> Marks)
{
    /// <summary>First and last reading.</summary>
    internal (DateTimeOffset From, DateTimeOffset To) Span =>
        (Probes.SelectMany(probe => probe.Points).Min(point => point.At), Probes.SelectMany(probe => probe.Points).Max(point => point.At));

    /// <summary>A probe: its number and what it showed.</summary>
    public sealed record Probe(int Number, IReadOnlyList<Point> Points);

    /// <summary>A reading, in degrees Fahrenheit, at a moment told in the shop's zone.</summary>
    public sealed record Point(DateTimeOffset At, decimal Degrees);

    /// <summary>A time in which a probe shows nothing.</summary>
    public sealed record Gap(int Probe, DateTimeOffset From, DateTimeOffset To);

    /// <summary>A level line at a temperature: over the whole chart, or from a moment to the one by which the temperature has to be reached.</summary>
    /// <param name="Words">"145 °F: 4 min asked for", "80 °F by 2:05 PM".</param>
    public sealed record Mark(decimal Degrees, string Words, DateTimeOffset? From = null, DateTimeOffset? To = null);
}
