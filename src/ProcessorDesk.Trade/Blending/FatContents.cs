namespace ProcessorDesk.Trade.Blending;

/// <summary>Published fat contents, each once.</summary>
public static class FatContents
{
    private const string Usda = "USDA National Nutrient Database, Standard Reference (fat, % raw)";

    // The database's ground deer (17343, 7.13 %) is farmed red and fallow deer: it would mislead for wild deer and is left out.

    /// <summary>All of them: game, small stock, pork, beef.</summary>
    public static IReadOnlyList<FatContent> All { get; } =
    [
        Row("deer", "Deer", 2.42m, 17164),
        Row("elk", "Elk", 1.45m, 17166),
        Row("pronghorn", "Pronghorn", 2.03m, 17144),
        Row("moose", "Moose", 0.74m, 17172),
        Row("bison", "Bison, lean", 1.84m, 17156),
        Row("wildBoar", "Wild boar", 3.33m, 17158),
        Row("bear", "Bear", 8.30m, 17146),
        Row("goat", "Goat", 2.31m, 17168),
        Row("porkBelly", "Pork belly", 53.01m, 10005),
        Row("porkFat", "Pork separable fat", 65.70m, 10006),
        Row("porkBackfat", "Pork backfat", 88.69m, 10004),
        Row("groundPork", "Ground pork", 21.19m, 10219),
        Row("beefSuet", "Beef suet", 94.00m, 13335),
        .. LeanPoints("groundBeef", "Ground beef", Usda, 'A', 95, 90, 85, 80, 75, 70),
        .. LeanPoints("porkTrim", "Pork trim", "trade term, from memory", 'M', 72, 50, 42),
    ];

    /// <exception cref="ArgumentException">There is no figure of that id.</exception>
    public static FatContent Find(string id) =>
        All.FirstOrDefault(content => content.Id == id) ?? throw new ArgumentException($"No fat content is called {id}.", nameof(id));

    private static FatContent Row(string id, string name, decimal percent, int ndbNumber) =>
        new(id, name, Proportion.FromPercent(percent), ndbNumber, Usda, 'A');

    private static IEnumerable<FatContent> LeanPoints(string id, string name, string source, char mark, params int[] points) =>
        points.Select(lean => new FatContent($"{id}{lean}", $"{name}, {lean} % lean", Proportion.FromPercent(100 - lean), null, source, mark));
}
