using ProcessorDesk.Records;
using ProcessorDesk.Trade;

namespace ProcessorDesk.SeedDemo;

/// <summary>
/// The charts of the made-up smokehouse, at two probes of which the second lags a degree. Cooking ends over 152 °F for a quarter of an hour
/// and more; chilling goes from 130 to 80 °F in an hour and to 40 in three and a half more.
/// </summary>
internal static class DemoReadings
{
    /// <param name="Minutes">Since the first reading.</param>
    /// <param name="Degrees">Fahrenheit, at the first probe.</param>
    internal sealed record Line(int Minutes, decimal Degrees);

    private static readonly decimal[] s_warming =
        [46m, 58m, 70m, 81m, 91m, 100m, 108m, 115m, 121m, 126m, 131m, 136m, 140m, 144m, 147m, 150m, 152.5m, 154m, 155.5m];

    public static IReadOnlyList<Line> Cooking { get; } = [.. s_warming.Select((degrees, i) => new Line(15 * i, degrees))];

    /// <summary>Until the chart ran out at 131 °F; one reading more when somebody saw it, two hours later.</summary>
    public static IReadOnlyList<Line> CookingWithGap { get; } = [.. Cooking.Take(11), Cooking[^1]];

    /// <summary>The first smoke of a batch that is still in it.</summary>
    public static IReadOnlyList<Line> FirstHalfHour { get; } = [.. Cooking.Take(3)];

    public static IReadOnlyList<Line> Chilling { get; } =
    [
        new(0, 154m), new(15, 134m), new(30, 118m), new(45, 104m), new(60, 92m), new(75, 83m), new(90, 76m),
        new(120, 66m), new(150, 58m), new(180, 51m), new(210, 46m), new(240, 42m), new(270, 38.5m),
    ];

    public static IEnumerable<BatchReading> Of(int batchId, ReadingStage stage, DateTimeOffset begun, IReadOnlyList<Line> lines, Act act) =>
        from line in lines
        from probe in (int[])[1, 2]
        let lag = stage == ReadingStage.Cooking ? 1 - probe : probe - 1
        select BatchReading.OfTemperature(
            batchId, stage, probe, Temperature.FromFahrenheit(line.Degrees + lag), begun.UtcDateTime.AddMinutes(line.Minutes), act.Now, act.Hand.Id);
}
