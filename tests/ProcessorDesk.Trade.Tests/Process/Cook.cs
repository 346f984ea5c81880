using ProcessorDesk.Trade.Process;

namespace ProcessorDesk.Trade.Tests.Process;

/// <summary>Records of readings for the tests, by the time since the first.</summary>
internal static class Cook
{
    public static readonly DateTime Start = new(2025, 11, 15, 14, 0, 0, DateTimeKind.Utc);

    /// <summary>A reading so many seconds after the start.</summary>
    public static ProcessReading At(decimal seconds, decimal fahrenheit, int probe = 1) =>
        new(Start.AddTicks((long)(seconds * TimeSpan.TicksPerSecond)), probe, Temperature.FromFahrenheit(fahrenheit));

    /// <summary>Readings at minutes after the start: (minute, °F), …</summary>
    public static List<ProcessReading> Minutes(params (decimal Minute, decimal Fahrenheit)[] entries) => OfProbe(1, entries);

    public static List<ProcessReading> OfProbe(int probe, params (decimal Minute, decimal Fahrenheit)[] entries) =>
        [.. entries.Select(entry => At(entry.Minute * 60m, entry.Fahrenheit, probe))];

    /// <summary>Held at one temperature for so many seconds, with a reading every ten minutes and at the end.</summary>
    public static List<ProcessReading> Held(decimal fahrenheit, decimal seconds)
    {
        List<ProcessReading> readings = [];
        for (var at = 0m; at < seconds; at += 600m)
            readings.Add(At(at, fahrenheit));
        readings.Add(At(seconds, fahrenheit));
        return readings;
    }
}
