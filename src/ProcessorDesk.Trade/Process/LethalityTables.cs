namespace ProcessorDesk.Trade.Process;

/// <summary>The published cooking tables, each figure once, and what else the guideline says of cooking.</summary>
public static class LethalityTables
{
    internal const string Guideline = "FSIS Cooking Guideline for Meat and Poultry Products (Revised Appendix A), FSIS-GD-2021-14";

    // Seconds; the guideline prints minutes up to 145 °F.
    private static readonly (int At, int SixFive, int Seven, int Five)[] s_meat =
    [
        (130, 112 * 60, 121 * 60, 86 * 60), (131, 89 * 60, 97 * 60, 69 * 60), (132, 71 * 60, 77 * 60, 55 * 60), (133, 56 * 60, 62 * 60, 44 * 60),
        (134, 45 * 60, 47 * 60, 35 * 60), (135, 36 * 60, 37 * 60, 28 * 60), (136, 28 * 60, 32 * 60, 22 * 60), (137, 23 * 60, 24 * 60, 18 * 60),
        (138, 18 * 60, 19 * 60, 14 * 60), (139, 15 * 60, 15 * 60, 11 * 60), (140, 12 * 60, 12 * 60, 9 * 60), (141, 9 * 60, 10 * 60, 7 * 60),
        (142, 8 * 60, 8 * 60, 6 * 60), (143, 6 * 60, 6 * 60, 5 * 60), (144, 5 * 60, 5 * 60, 4 * 60), (145, 4 * 60, 4 * 60, 3 * 60),
        (146, 169, 182, 130), (147, 134, 144, 103), (148, 107, 115, 82), (149, 85, 91, 65), (150, 67, 72, 52), (151, 54, 58, 41),
        (152, 43, 46, 33), (153, 34, 37, 26), (154, 27, 29, 21), (155, 22, 23, 17), (156, 17, 19, 14), (157, 14, 15, 11), (158, 0, 0, 0),
    ];

    // Seconds, at 12 % fat, the rows we have; the guideline prints minutes up to 152 °F, and for turkey at 155 °F.
    private static readonly (int At, decimal Chicken, decimal Turkey)[] s_poultry =
    [
        (136, 81.4m * 60m, 70.8m * 60m), (140, 35m * 60m, 33.7m * 60m), (145, 13m * 60m, 13.8m * 60m), (150, 4.2m * 60m, 4.9m * 60m),
        (152, 2.3m * 60m, 2.8m * 60m), (155, 54.4m, 1.3m * 60m), (158, 26.9m, 40.9m), (160, 16.9m, 26.9m), (162, 10.5m, 17.7m),
        (164, 0m, 11.7m), (165, 0m, 0m),
    ];

    public static Temperature ComeUpFrom { get; } = Temperature.FromFahrenheit(50m);

    public static Temperature ComeUpTo { get; } = Temperature.FromFahrenheit(130m);

    /// <summary>The longest the meat may take from the one to the other.</summary>
    public static TimeSpan ComeUp { get; } = TimeSpan.FromHours(6);

    public const string ComeUpSource = Guideline + ", p. 24";

    public static IReadOnlyList<LethalityTable> All { get; } =
    [
        Meat("lethality.meat.6.5", "meat, 6.5-log", row => row.SixFive),
        Meat("lethality.meat.7", "meat, 7-log", row => row.Seven),
        Meat("lethality.meat.5", "meat, 5-log", row => row.Five),
        Poultry("lethality.chicken", "chicken, 7-log", row => row.Chicken),
        Poultry("lethality.turkey", "turkey, 7-log", row => row.Turkey),
        Poultry("lethality.poultry", "any poultry, 7-log: the longer of chicken and turkey", row => Math.Max(row.Chicken, row.Turkey)),
    ];

    /// <summary>The table of a kind of product; null where none holds.</summary>
    public static LethalityTable? For(LethalityKind kind) => kind switch
    {
        LethalityKind.Meat65Log => All[0],
        LethalityKind.Meat7Log => All[1],
        LethalityKind.Meat5Log => All[2],
        LethalityKind.Chicken => All[3],
        LethalityKind.Turkey => All[4],
        LethalityKind.AnyPoultry => All[5],
        LethalityKind.DriedFirst => null,
    };

    private static LethalityTable Meat(string id, string name, Func<(int At, int SixFive, int Seven, int Five), int> column) =>
        new(id, name, [.. s_meat.Select(row => Row(row.At, column(row)))], Guideline + ", Table 2", "A");

    private static LethalityTable Poultry(string id, string name, Func<(int At, decimal Chicken, decimal Turkey), decimal> column) =>
        new(id, name, [.. s_poultry.Select(row => Row(row.At, column(row)))], Guideline + ", Table 6, at 12 % fat", "A");

    private static LethalityRow Row(int at, decimal seconds) =>
        new(Temperature.FromFahrenheit(at), new TimeSpan(decimal.ToInt64(seconds * TimeSpan.TicksPerSecond)));
}
