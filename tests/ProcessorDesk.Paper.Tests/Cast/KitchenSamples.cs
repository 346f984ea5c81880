using static ProcessorDesk.Paper.Tests.Cast.Samples;

namespace ProcessorDesk.Paper.Tests.Cast;

internal static class KitchenSamples
{
    private const string Limit = "156.25 ppm (1/4 oz per 100 lb)";
    private const string Source = "9 CFR 424.21(c), 2015 edition";

    public static readonly BatchSheet Ring = new(
        Shop.Name, "Smoked ring sausage", "31", Code, IsPooled: false, IsCured: true, NoPork: false,
        [new BatchOwner("Rosa Lindqvist", "1042", "25.00 lb")], "Mon 7 Dec 2026", "version 3", new DateTime(2026, 12, 6, 16, 40, 0),
        [], [Lead], ["Soybeans"], [RingLoad("14"), RingLoad("15")], "37.14 lb",
        new BatchAfter(
            "At least 4 h at or under 40 °F", "Beef rounds, 40 mm: soak 38 ft for an hour in lukewarm water",
            [
                BatchLog.Cooking("Until both probes show 152 °F in the middle of the thickest piece."),
                BatchLog.Chilling("From 130 to 80 °F in 1 h 30 min at most, from 80 to 40 °F in 5 h at most."),
            ]));

    public static readonly BatchSheet Fresh = Ring with
    {
        Product = "Fresh hot sausage",
        BatchNumber = "32",
        IsCured = false,
        Allergens = [],
        Cautions = [],
        Loads = [RingLoad("") with { Cure = null, Green = "18.53 lb" }],
        Green = "18.53 lb",
        After = new BatchAfter("", "", []),
    };

    public static readonly BatchSheet Extreme = Ring with
    {
        ShopName = LongShop.Name,
        Product = "Jalapeño and cheese snack stick, mild, in the small casing, for the whole church",
        BatchNumber = "2026-00031",
        Code = "C2Y-31W",
        IsPooled = true,
        NoPork = true,
        Owners = [new BatchOwner(LongName, "2026-104217", "1,125.00 lb"), new BatchOwner(LongWord, "2026-104218", "1,125.00 lb"), .. Enumerable.Range(3, 12).Select(i => new BatchOwner($"Owner {i} Lindqvist", $"10{i + 40}", "12.50 lb"))],
        PlannedFor = "",
        Formula = "version 112",
        Holds = [Pending, NoTag],
        Cautions = [Lead, Disease],
        Allergens = ["Milk", "Soybeans", "Wheat", "Sesame", "Egg", "Tree nuts (walnut, hazelnut)", "Fish"],
        Loads = [.. Enumerable.Range(1, 2).Select(Crowded)],
        Green = "2,696.78 lb",
        After = new BatchAfter(
            Many("At least 12 h at or under 40 °F, covered, the lid marked with the batch and the hour.", 3), Many("Collagen 19 mm, 240 ft, not soaked.", 4),
            [
                BatchLog.Fermenting("To pH 5.3 within 1,200 degree-hours above 60 °F."),
                BatchLog.Cooking(Many("Until all probes show 158 °F in the middle of the thickest piece.", 3), 40),
                BatchLog.Chilling("From 130 to 80 °F in 1 h 30 min at most, from 80 to 40 °F in 5 h at most.", 30),
            ]),
    };

    /// <summary>17.86 lb of meat and fat with 4 % of additions: 18.57 lb.</summary>
    private static BatchLoad RingLoad(string lug) => new(
        [new BatchMeat("Rosa Lindqvist", "1042", lug, "12.50 lb", "12.50 lb")],
        [new BatchFat("pork trim, 72 % lean", "5.36 lb", "17.86 lb")],
        "17.86 lb",
        [
            new BatchIngredient("Salt", "141.8 g", "5.00 oz", "18.17 lb"), new BatchIngredient("Black pepper", "24.3 g", "0.86 oz", "18.23 lb"),
            new BatchIngredient("Garlic, granulated", "16.2 g", "0.57 oz", "18.26 lb"), new BatchIngredient("Water, ice cold", "121.5 g", "4.29 oz", "18.53 lb"),
        ],
        new BatchCure(
            [new BatchCureLine("Pink curing salt", "6.25 % nitrite", "20.2 g", "0.71 oz", "20.2 g", "18.57 lb")],
            [new BatchCureFigure("nitrite", "155.84 ppm", Limit, Source)]),
        "18.57 lb");

    private static BatchLoad Crowded(int number) => new(
        [.. Enumerable.Range(1, 14).Select(i => new BatchMeat(i == 1 ? LongName : $"Owner {i} {LongWord}", $"2026-1042{i}", i % 3 == 0 ? "" : $"1,2{i:00}-B", "12.50 lb", $"{i * 12.5m:0.00} lb"))],
        [new BatchFat("beef fat from the flank and the kidney, ground once, bought in frozen", "205.36 lb", "380.36 lb"), new BatchFat("suet", "105.36 lb", "485.72 lb")],
        "485.72 lb",
        [.. Enumerable.Range(1, 16).Select(i => new BatchIngredient($"Ingredient {number}.{i}: high-temperature cheddar cheese, diced", "12,345.6 g", "27 lb 3.48 oz", $"{485.72m + i * 27.22m:0.00} lb"))],
        new BatchCure(
            [
                new BatchCureLine("Curing salt with nitrate, of the maker's second strength", "6.25 % nitrite, 4 % nitrate", "13,634.2 g", "30 lb 0.92 oz", "13,634.2 g", "1,345.67 lb"),
                new BatchCureLine("Seasoning with cure in it", "0.5 % nitrite", "1,234.5 g", "2 lb 11.54 oz", "1,300.0 g", "1,348.39 lb"),
            ],
            [new BatchCureFigure("nitrite", "156.21 ppm", Limit, Source), new BatchCureFigure("nitrate", "100 ppm", "1,718.75 ppm (2 3/4 oz per 100 lb)", Source)]),
        "1,348.39 lb");
}
