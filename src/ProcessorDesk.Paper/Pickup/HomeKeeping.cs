namespace ProcessorDesk.Paper;

/// <summary>How to keep and cook the meat at home: published guidance, each figure once.</summary>
public static class HomeKeeping
{
    /// <summary>Where the storage times are published.</summary>
    public const string StorageSource = "USDA cold food storage chart; freezer times are for quality only";

    /// <summary>Where the cooking temperatures are published.</summary>
    public const string CookingSource = "USDA FSIS safe minimum internal temperatures";

    /// <summary>What it is, how long at 0 °F, how long at 40 °F.</summary>
    public static IReadOnlyList<(string What, string Frozen, string Chilled)> Storage { get; } =
    [
        ("Ground meat", "3–4 months", "1–2 days"),
        ("Steaks", "6–12 months", "3–5 days"),
        ("Chops", "4–6 months", "3–5 days"),
        ("Roasts", "4–12 months", "3–5 days"),
        ("Raw sausage", "1–2 months", "1–2 days"),
        ("Smoked links", "1–2 months", "7 days"),
        ("Jerky and hard sausage", "1–2 months", "2–3 weeks"),
        ("Bacon", "1 month", "7 days"),
    ];

    /// <summary>What it is and how hot its middle must get.</summary>
    public static IReadOnlyList<Fact> Cooking { get; } =
    [
        new("Ground meat and sausage, and all game", "160 °F"),
        new("Steaks, chops and roasts of beef, pork, lamb", "145 °F, then 3 minutes of rest"),
        new("Anything with poultry in it", "165 °F"),
    ];
}
