using static ProcessorDesk.Trade.Curing.CureAgent;
using static ProcessorDesk.Trade.Curing.CureBound;

namespace ProcessorDesk.Trade.Curing;

/// <summary>
/// The published figures of the curing rules, each once. An ounce to 100 lb is 1/1600, which is 625 ppm. The same weight
/// limit holds for the sodium and the potassium salt, bacon apart, whose printed potassium integers stand as printed.
/// </summary>
public static class CureLimits
{
    private const string Limits = "9 CFR 424.21(c), 2015 edition";
    private const string Bacon = "9 CFR 424.22(b), 2015 edition";

    /// <summary>Where the ways of working are published.</summary>
    public const string Handbook = "USDA FSIS Directive 7620.3, Processing Inspectors' Calculations Handbook, 1995";

    public static CureLimit ComminutedNitrite { get; } =
        Ounces("comminuted.nitrite", "comminuted product, on the green weight of the meat block", Nitrite, 0.25m, "1/4 oz per 100 lb");

    public static CureLimit ComminutedNitrate { get; } =
        Ounces("comminuted.nitrate", "comminuted product, on the green weight of the meat block", Nitrate, 2.75m, "2 3/4 oz per 100 lb");

    /// <summary>The least nitrite in cured product that must be kept cold.</summary>
    public static CureLimit KeepRefrigeratedLeast { get; } = new(
        "keep-refrigerated.nitrite.least", "cured product marked keep refrigerated", Nitrite, AtLeast, Ppm(120), "120 ppm", Handbook, 'B');

    /// <summary>All of them, in the order of the rules.</summary>
    public static IReadOnlyList<CureLimit> All { get; } =
    [
        ComminutedNitrite,
        ComminutedNitrate,
        Ounces("dry.nitrite", "dry-cured product, on its green weight", Nitrite, 1m, "1 oz per 100 lb"),
        Ounces("dry.nitrate", "dry-cured product, on its green weight", Nitrate, 3.5m, "3 1/2 oz per 100 lb"),
        Pickle("pickle.nitrite", Nitrite, 200, "2 lb per 100 gal of pickle at 10 % pump"),
        Pickle("pickle.nitrate", Nitrate, 700, "7 lb per 100 gal of pickle at 10 % pump"),
        new("finished.nitrite", "finished product by any method, as sodium nitrite", Nitrite, AtMost, Ppm(200), "200 ppm", Limits, 'A'),
        new("bacon.pumped.nitrite.sodium", "pumped or massaged bacon, on skin-free green belly", Nitrite, Prescribed, Ppm(120), "120 ppm sodium nitrite", Bacon, 'A'),
        new("bacon.pumped.nitrite.potassium", "pumped or massaged bacon, on skin-free green belly", Nitrite, Prescribed, Ppm(148), "148 ppm potassium nitrite", Bacon, 'A'),
        new("bacon.pumped.accelerator", "pumped or massaged bacon", Accelerator, Prescribed, Ppm(550), "550 ppm sodium ascorbate or erythorbate", Bacon, 'A'),
        NoNitrate("bacon.pumped.nitrate", "pumped or massaged bacon"),
        new("bacon.immersion.nitrite.sodium", "immersion-cured bacon, on skin-free green belly", Nitrite, AtMost, Ppm(120), "120 ppm sodium nitrite", Bacon, 'A'),
        new("bacon.immersion.nitrite.potassium", "immersion-cured bacon, on skin-free green belly", Nitrite, AtMost, Ppm(148), "148 ppm potassium nitrite", Bacon, 'A'),
        NoNitrate("bacon.immersion.nitrate", "immersion-cured bacon"),
        new("bacon.dry.nitrite.sodium", "dry-cured bacon, on skin-free green belly", Nitrite, AtMost, Ppm(200), "200 ppm sodium nitrite", Bacon, 'A'),
        new("bacon.dry.nitrite.potassium", "dry-cured bacon, on skin-free green belly", Nitrite, AtMost, Ppm(246), "246 ppm potassium nitrite", Bacon, 'A'),
        NoNitrate("bacon.dry.nitrate", "dry-cured bacon"),
        KeepRefrigeratedLeast,
        new("preserving.nitrite.effect", "the least with some preserving effect", Nitrite, Note, Ppm(40), "40 ppm", Handbook, 'B'),
        Ounces("accelerator.acid", "ascorbic or erythorbic acid, only with a cure", Accelerator, 0.75m, "3/4 oz per 100 lb"),
        Ounces("accelerator.salt", "sodium ascorbate or erythorbate, only with a cure", Accelerator, 0.875m, "7/8 oz per 100 lb"),
        new("home-cure.nitrite", "home-curing preparations sold to households, in the finished meat", Nitrite, Note, Ppm(200), "200 ppm", "21 CFR 172.170", 'A'),
        new("home-cure.nitrate", "home-curing preparations sold to households, in the finished meat", Nitrate, Note, Ppm(500), "500 ppm", "21 CFR 172.170", 'A'),
    ];

    /// <exception cref="ArgumentException">There is no figure of that id.</exception>
    public static CureLimit Find(string id) =>
        All.FirstOrDefault(limit => limit.Id == id) ?? throw new ArgumentException($"No curing figure is called {id}.", nameof(id));

    private static Ratio Ppm(int partsPerMillion) => Ratio.Of(partsPerMillion, 1_000_000);

    private static CureLimit Ounces(string id, string what, CureAgent agent, decimal ouncesPer100Pounds, string printed) =>
        new(id, what, agent, AtMost, Ratio.FromDecimal(ouncesPer100Pounds) / Ratio.Of(1600, 1), printed, Limits, 'A');

    // The rule's pounds per 100 gallons are right for a pickle of 10 lb a gallon, so the ppm is held on the weighed pickle.
    private static CureLimit Pickle(string id, CureAgent agent, int partsPerMillion, string printed) =>
        new(id, "pumped, massaged or immersed product, by the weighed pickle", agent, AtMost, Ppm(partsPerMillion), printed, Limits, 'A');

    private static CureLimit NoNitrate(string id, string what) => new(id, what, Nitrate, AtMost, Ratio.Zero, "none", Bacon, 'A');
}
