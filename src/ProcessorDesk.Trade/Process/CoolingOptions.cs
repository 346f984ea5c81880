namespace ProcessorDesk.Trade.Process;

/// <summary>The published cooling options, each once.</summary>
public static class CoolingOptions
{
    private const string Ohio = "Ohio State University meat science";

    public static CoolingOption One { get; } = new(
        "cooling.1", "option 1", [Step(130, 80, 90), Step(80, 40, 300)], false, false, Ohio, "A");

    /// <summary>Its last step has no time, but 40 °F is reached before packing.</summary>
    public static CoolingOption Two { get; } = new(
        "cooling.2", "option 2", [Step(120, 80, 60), Step(80, 55, 300), Step(55, 40, null)], false, false, Ohio, "A");

    /// <summary>Its newer conditions on nitrite and accelerator are known to us from memory only; hence off.</summary>
    public static CoolingOption Three { get; } = new(
        "cooling.3", "option 3, cured product", [Step(130, 80, 300), Step(80, 40, 600)], true, true, "an older text; to be confirmed against FSIS-GD-2021-13", "B");

    public static IReadOnlyList<CoolingOption> All { get; } = [One, Two, Three];

    /// <exception cref="ArgumentException">There is no option of that id.</exception>
    public static CoolingOption Find(string id) =>
        All.FirstOrDefault(option => option.Id == id) ?? throw new ArgumentException($"No cooling option is called {id}.", nameof(id));

    private static CoolingStep Step(int from, int to, int? minutes) => new(
        Temperature.FromFahrenheit(from), Temperature.FromFahrenheit(to), minutes is { } most ? TimeSpan.FromMinutes(most) : null);
}
