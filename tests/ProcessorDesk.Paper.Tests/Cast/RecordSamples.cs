using static ProcessorDesk.Paper.Tests.Cast.Samples;

namespace ProcessorDesk.Paper.Tests.Cast;

/// <summary>Process records: one that meets, and one with everything at its longest.</summary>
internal static class RecordSamples
{
    private const string Table = "FSIS Cooking Guideline for Meat and Poultry Products (Revised Appendix A), FSIS-GD-2021-14, Table 2";

    private static readonly DateTimeOffset s_in = new(2026, 12, 7, 7, 30, 0, TimeSpan.FromHours(-6));

    /// <summary>Two probes, read every quarter of an hour to 155 °F; the second shows nothing for an hour.</summary>
    public static ProbeChart Cooking { get; } = new(
        "Cooking, batch 31",
        [
            new ProbeChart.Probe(1, [.. Enumerable.Range(0, 17).Select(i => new ProbeChart.Point(s_in.AddMinutes(15 * i), 46 + 6.8m * i))]),
            new ProbeChart.Probe(2, [.. Enumerable.Range(0, 17).Where(i => i is < 6 or > 9).Select(i => new ProbeChart.Point(s_in.AddMinutes(15 * i), 44 + 6.8m * i))]),
        ],
        [new ProbeChart.Gap(2, s_in.AddMinutes(75), s_in.AddMinutes(150))],
        [new ProbeChart.Mark(145, "145 °F: 4 min asked for")]);

    public static ProbeChart Chilling { get; } = new(
        "Chilling, batch 31",
        [new ProbeChart.Probe(1, [.. Enumerable.Range(0, 10).Select(i => new ProbeChart.Point(s_in.AddMinutes(300 + 30 * i), 150 - 12 * i))])],
        [],
        [
            new ProbeChart.Mark(80, "80 °F by 2:30 PM", s_in.AddMinutes(330), s_in.AddMinutes(420)),
            new ProbeChart.Mark(40, "40 °F by 7:30 PM", s_in.AddMinutes(420), s_in.AddMinutes(720)),
        ]);

    public static readonly ProcessRecord Ring = new(
        Shop.Name, "Smoked ring sausage", "31", Code, "Released Tue 8 Dec, 9:12 AM, NH", "version 3", new DateTime(2026, 12, 8, 9, 20, 0), [],
        [new ProcessOwner("Rosa Lindqvist", "1042", "37.14 lb", "33.42 lb", "41")],
        [
            new ProcessLoad("1", "Mon 7 Dec, 9:05 AM, KH", "17.86 lb", "Pink curing salt 20.2 g", "155.84 ppm nitrite: meets", "156.25 ppm (1/4 oz per 100 lb), 9 CFR 424.21(c)"),
            new ProcessLoad("2", "Mon 7 Dec, 9:25 AM, KH", "17.85 lb", "Pink curing salt 20.2 g", "155.93 ppm nitrite: meets", "156.25 ppm (1/4 oz per 100 lb), 9 CFR 424.21(c)"),
        ],
        [
            new ProcessPart("Cooking: meets the table row", ["30 min at or above 145 °F at probe 2, the coldest; the row asks for 4 min."], Table, Cooking, ["Probe 1", "Probe 2"], Rows(Cooking)),
            new ProcessPart("Chilling: not shown by the record", ["Held against option 1: 130 to 80 °F in 1 h 30 min, then 80 to 40 °F in 5 h."], "Ohio State University meat science", Chilling, ["Probe 1"], Rows(Chilling)),
        ],
        ["Longest gap: 15 min cooking, 60 min chilling.", "Thermometer: 0.5 °F added above the table."],
        ["Drying 130 °F 60 min", "Smoke 150 °F 90 min", "Finish 175 °F to 155 °F inside"],
        [new ProcessEnding("Expert's letter, chilling", "Dr. Ida Marsh, extension meat lab", "Mon 7 Dec 2026", "Letter 26-114: cooling curve modelled, no growth to be expected", "Mon 7 Dec, 6:02 PM, NH")],
        [new ProcessStep("Mixed, load 1", "Mon 7 Dec, 9:05 AM", "KH", ""), new ProcessStep("Stuffed", "Mon 7 Dec, 1:40 PM", "KH", "41 pieces"), new ProcessStep("Into the heat", "Mon 7 Dec, 7:30 AM", "KH", "Undone by NH, Mon 7 Dec, 2:00 PM: the wrong batch")],
        [new Fact("Meat drawn", "25.00 lb"), new Fact("Left in the machines", "1.20 lb"), new Fact("Finished", "33.42 lb"), new Fact("Cooking and drying loss", "2.52 lb")],
        [Lead]);

    public static readonly ProcessRecord Extreme = Ring with
    {
        ShopName = LongShop.Name,
        Product = "Jalapeño and cheese snack stick, mild, in the small casing, for the whole church",
        State = "Thrown out Tue 8 Dec, 9:12 AM, NH: the chart ran out and nobody was there for half of the night",
        Holds = [Pending],
        Owners = [new ProcessOwner(LongName, "2026-104217", "1,125.00 lb", "1,000.00 lb", "1,234"), .. Enumerable.Range(2, 14).Select(i => new ProcessOwner($"{LongWord} {i}", "2026-104218", "1,125.00 lb", "–", "12"))],
        Loads = [.. Enumerable.Range(1, 20).Select(i => Ring.Loads[0] with { Number = $"{i}", Cure = Many("Curing salt with nitrate 13,634.2 g.", 3) })],
        Parts = [Ring.Parts[0] with { Facts = [Many("The readings leave out too much to tell.", 8)], Columns = ["Probe 1", "Probe 2", "Probe 3", "pH"], Rows = [.. Enumerable.Range(0, 70).Select(i => new[] { $"Mon 7 Dec {i / 4:00}:{i % 4 * 15:00}", "146.25 °F", "145.00 °F (struck)", "–", "5.31", "KH" })] }, Ring.Parts[1]],
        Programme = [.. Enumerable.Range(1, 12).Select(i => Many($"Stage {i}: 130 °F for 60 min, damper half open.", 3))],
        Endings = [.. Enumerable.Range(1, 6).Select(_ => Ring.Endings[0] with { Reference = Many("Letter 26-114: cooling curve modelled.", 5), Name = LongName })],
    };

    private static IReadOnlyList<IReadOnlyList<string>> Rows(ProbeChart chart) =>
    [
        .. chart.Probes[0].Points.Select(IReadOnlyList<string> (point) =>
            [PrintedDate.Of(TimeOnly.FromDateTime(point.At.DateTime)), .. chart.Probes.Select(probe => probe.Points.FirstOrDefault(one => one.At == point.At) is { } shown ? $"{shown.Degrees:0.0} °F" : "–"), "KH"]),
    ];
}
