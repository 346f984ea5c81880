using static ProcessorDesk.Paper.Tests.Cast.Samples;

namespace ProcessorDesk.Paper.Tests.Cast;

internal static class BoxSamples
{
    public static readonly BoxLabel Ordinary = new(
        Shop.Name, "2 of 4", "1042", [new ContentLine("Smoked ring sausage", "12 packs"), new ContentLine("Backstrap steaks", "4 packs")],
        "24.10 lb", new DateOnly(2026, 12, 9), "Freezer 2, shelf B", "", Code);

    public static readonly BoxLabel Named = Ordinary with { Owner = "Rosa Lindqvist", Contents = [new ContentLine("Plain ground", "24 packs")], Code = "B1X-94T" };

    public static readonly BoxLabel Extreme = new(
        LongShop.Name, "112 of 118", "2026-104217",
        [.. Enumerable.Range(1, 12).Select(i => new ContentLine($"Kind {i}, jalapeño and cheese snack stick, mild, in the small casing", $"{i * 11} packs of 1/2 lb"))],
        "1,240.00 lb", new DateOnly(2026, 11, 25), "The long freezer behind the smokehouse, third shelf from the door", LongName, "C2Y-31W");
}
