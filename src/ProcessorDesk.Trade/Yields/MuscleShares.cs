namespace ProcessorDesk.Trade.Yields;

/// <summary>
/// How a deer carcass divides into its muscle groups, by weight. An estimate, until a shop's own weights say better: from
/// farmed fallow deer, whose printed means sum to 100.7 and are scaled to one.
/// </summary>
public static class MuscleShares
{
    public const string Source = "Massey University 1985, farmed fallow deer, scaled to one";

    public const string Mark = "A";

    public static IReadOnlyList<(string Group, decimal PrintedPercent)> Deer { get; } =
        [("neck", 12.6m), ("flank", 15.4m), ("shoulder", 17.8m), ("saddle", 15.5m), ("haunch", 39.4m)];

    /// <summary>The exact share of some groups together; zero for none, one for all.</summary>
    public static Ratio OfDeer(IReadOnlyCollection<string> groups) =>
        Ratio.FromDecimal(Deer.Where(one => groups.Contains(one.Group)).Sum(one => one.PrintedPercent)) / Ratio.FromDecimal(Deer.Sum(one => one.PrintedPercent));
}
