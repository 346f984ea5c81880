using static ProcessorDesk.Paper.Tests.Cast.Samples;

namespace ProcessorDesk.Paper.Tests.Cast;

internal static class PickupSamples
{
    /// <summary>All at once, without boxes.</summary>
    public static readonly PickupSummary Ordinary = new(
        Shop, "Rosa Lindqvist", "1042", Code, new DateOnly(2026, 12, 18), [],
        [
            new PickupItem("Smoked ring sausage", "34 packs", "33.40 lb"), new PickupItem("Summer sausage", "20 pieces", "20.10 lb"),
            new PickupItem("Fresh hot sausage", "15 packs", "15.00 lb"), new PickupItem("Antlers", "1", "", "D3Z-55K"),
        ],
        "68.50 lb", [], [], IsGame: true, [Lead, Disease], "");

    /// <summary>The second of three hand-overs: 33.40 + 20.10 = 53.50 lb in two boxes.</summary>
    public static readonly PickupSummary Second = Ordinary with
    {
        Boxes =
        [
            new PickupBox("2 of 4", "B1X-94T", [new ContentLine("Smoked ring sausage", "34 packs")], "33.40 lb"),
            new PickupBox("3 of 4", "C2Y-31W", [new ContentLine("Summer sausage", "12 pieces"), new ContentLine("Fresh hot sausage", "8 packs")], "20.10 lb"),
        ],
        Items = [new PickupItem("Antlers", "1", "", "D3Z-55K")],
        Together = "2 boxes, 53.50 lb",
        Before = [new EarlierHandOver(new DateOnly(2026, 12, 4), "Ivo Lindqvist", [new PickupBox("1 of 4", "E4A-60M", [new ContentLine("Backstrap steaks", "8 packs")], "9.40 lb")], [new PickupItem("Heart", "1", "")])],
        StillToCome = [new StillToCome("Box 4 of 4: dried sausage, about 6 lb", "Drying; about Fri 22 Jan 2027"), new StillToCome("Hide", "At the tannery")],
        Collector = "Ivo Lindqvist",
    };

    public static readonly PickupSummary Extreme = Second with
    {
        Shop = LongShop,
        Owner = LongName,
        Code = "F5B-71N",
        Boxes = [.. Enumerable.Range(1, 16).Select(i => new PickupBox($"{i} of 118", "B1X-94T", [.. Enumerable.Range(1, i % 4 + 1).Select(k => new ContentLine($"Kind {i}.{k}: jalapeño and cheese snack stick, mild, in the small casing", $"{i * 3} packs"))], "1,240.00 lb"))],
        Items = [.. Enumerable.Range(1, 10).Select(i => new PickupItem($"Part {i}: cape with the head for the shoulder mount", "1", "", "D3Z-55K"))],
        Together = "16 boxes, 19,840.00 lb",
        Before = [.. Enumerable.Range(1, 6).Select(i => Second.Before[0] with { TakenBy = i % 2 == 0 ? LongName : LongWord })],
        StillToCome = [.. Enumerable.Range(1, 12).Select(i => new StillToCome($"Dried sausage {i}, about 6 lb, in the small casing", "It has to lose a third of its weight first and is ready when it is ready, about Fri 22 Jan 2027 as it stands today"))],
        Collector = LongWord,
    };
}
