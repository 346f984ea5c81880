namespace ProcessorDesk.Trade.Process;

/// <summary>How many degree-hours above 60 °F a fermenting product may take to become sour enough.</summary>
/// <param name="Id">Lasting name; a shop's own figure names the one it stands for.</param>
/// <param name="Name">The highest temperature it holds for, as a person reads it.</param>
/// <param name="Most">Hours times degrees Fahrenheit above 60; exactly that many are still within.</param>
/// <param name="Source">Where it is published.</param>
/// <param name="Mark">How the source was read: A, B, C, M, or "–".</param>
public sealed record DegreeHourLimit(string Id, string Name, int Most, string Source, string Mark)
{
    private const string Form = "university fermentation log form, 2012";

    /// <summary>What is at or below this counts for nothing, and never for less.</summary>
    public static Temperature Base { get; } = Temperature.FromFahrenheit(60m);

    /// <summary>Sour enough at or below this.</summary>
    public static Ph Target { get; } = Ph.FromHundredths(530);

    public static IReadOnlyList<DegreeHourLimit> All { get; } =
    [
        new("fermentation.below-90", "below 90 °F", 1200, Form, "A"),
        new("fermentation.90-100", "from 90 to 100 °F", 1000, Form, "A"),
        new("fermentation.above-100", "above 100 °F", 900, Form, "A"),
    ];

    /// <summary>The limit by the highest temperature reached.</summary>
    public static DegreeHourLimit For(Temperature highest) =>
        highest.Fahrenheit < 90m ? All[0] : highest.Fahrenheit <= 100m ? All[1] : All[2];
}
