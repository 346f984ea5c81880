namespace ProcessorDesk.Records;

/// <summary>The muscle groups of an animal and what can become of each: the built-in menu of a game and meat shop.</summary>
/// <remarks>Common practice, no source. Codes are stored on cut order lines; names are shown.</remarks>
public static class CutMenu
{
    public const string Grind = "grind";

    public static IReadOnlyList<Entry> Groups { get; } =
    [
        new("neck", "Neck", ["grind", "roast", "stew", "whole"]),
        new("shoulder", "Shoulders", ["grind", "roast", "stew", "jerky"]),
        new("loin", "Backstrap (loin)", ["butterfly", "steak", "chop", "whole", "grind"]),
        new("tenderloin", "Tenderloins", ["whole", "butterfly", "grind"]),
        new("rib", "Ribs and flank", ["grind", "rack"]),
        new("haunch", "Hind legs (rounds)", ["steak", "roast", "jerky", "thin", "stew", "grind"]),
        new("shank", "Shanks", ["grind", "crosscut", "whole"]),
    ];

    public static IReadOnlyDictionary<string, string> Cuts { get; } = new Dictionary<string, string>
    {
        ["grind"] = "Grind",
        ["steak"] = "Steaks",
        ["butterfly"] = "Butterflied chops",
        ["chop"] = "Chops, bone in",
        ["roast"] = "Roast",
        ["stew"] = "Stew meat",
        ["jerky"] = "Jerky strips",
        ["thin"] = "Thin-sliced",
        ["whole"] = "Leave whole",
        ["rack"] = "Rack, bone in",
        ["crosscut"] = "Cross-cut, bone in",
    };

    /// <summary>Starting points that fill the whole order in one tap; each line may then be changed.</summary>
    public static IReadOnlyList<Style> Styles { get; } =
    [
        new("all-grind", "All grind", group => "grind"),
        new("steaks", "Steaks and grind", group => group switch
        {
            "loin" => "steak",
            "tenderloin" => "whole",
            "haunch" => "steak",
            _ => "grind",
        }),
        new("mixed", "Mixed", group => group switch
        {
            "loin" => "butterfly",
            "tenderloin" => "whole",
            "haunch" => "steak",
            "shoulder" => "roast",
            "neck" => "roast",
            _ => "grind",
        }),
    ];

    /// <summary>What the cutter looks to on every animal.</summary>
    public static IReadOnlyList<(string Code, string Name)> Checklist { get; } =
    [
        ("glands", "Glands and lymph nodes out"),
        ("bloodshot", "Bloodshot cut wide and thrown out"),
        ("hair", "Hair and dirt off"),
        ("bone", "Bone chips out"),
        ("spine", "Brain and spinal cord not cut"),
    ];

    /// <summary>Cut through the backbone, which may not stay in older cattle: 9 CFR 310.22 (from memory).</summary>
    public static bool HasBackbone(string cut) => cut == "chop";

    public static string GroupName(string code) => Groups.FirstOrDefault(group => group.Code == code)?.Name ?? code;

    public static string CutName(string code) => Cuts.GetValueOrDefault(code, code);

    public sealed record Entry(string Code, string Name, IReadOnlyList<string> Cuts);

    public sealed record Style(string Code, string Name, Func<string, string> CutFor);
}
