using static ProcessorDesk.Paper.Tests.Cast.Samples;

namespace ProcessorDesk.Paper.Tests.Cast;

internal static class TraceSamples
{
    private static readonly Caution s_agency = new("Your agency first", "Ask your agency and follow it; it goes before everything here.");

    /// <summary>21.00 of meat, 7.00 of fat and 0.56 of seasoning: 28.56 lb; 28.00 finished, 16.00 and 12.00 of it back.</summary>
    public static readonly TraceSheet Ordinary = new(
        Shop, "White-tail deer, tag TX-0417", "Tue 1 Dec 2026, 2:05 PM", "Nell Harrow", [new HoldNotice("White-tail deer, tag TX-0417: disease detected", "Nothing of it leaves.")],
        [new Fact("Owners told", "1 of 2"), new Fact("Batches it is in", "1"), new Fact("Boxes here", "1"), new Fact("Boxes handed over", "1")],
        [
            new OwnerToTell("Rosa Lindqvist", "1042", "(555) 010-0142", "1 here", "Told, Tue 1 Dec, 1:40 PM, NH: will bring nothing, waits for the agency", IsTold: true),
            new OwnerToTell("Ben Roth", "1043", "(555) 010-0143", "1 handed over", "", IsTold: false),
        ],
        ["In Lug 14, filled Wed 25 Nov: 8.00 lb still in it"],
        [
            new BoxTraced("Box 1 of job 1042, Rosa Lindqvist", Code, "Hot sausage, 16 packs", "16.00 lb", "Here: Freezer 2"),
            new BoxTraced("Box 1 of job 1043, Ben Roth", "C2Y-31W", "Hot sausage, 12 packs", "12.00 lb", "Handed over Fri 27 Nov, 4:00 PM to Bea Roth; (555) 010-0143"),
        ],
        [new Fact("Here, 1 box", "16.00 lb"), new Fact("Handed over, 1 box", "12.00 lb")],
        [new AnimalTraced("White-tail deer, tag TX-0417", "Rosa Lindqvist, job 1042", "Wed 25 Nov, from Unit 9", "Detected, sample S 118, Tue 1 Dec\nOn hold: disease detected")],
        [new LugTraced("Lug 14, filled Wed 25 Nov", "Job 1042, Rosa Lindqvist", "White-tail deer, tag TX-0417", "20.00 lb", "12.00 lb into batch 31, load 1\n8.00 lb still in it")],
        [new LotTraced("Seasoning, lot S 7", "Example Supply, received Fri 20 Nov", "200.0 g into batch 31, load 1")],
        [
            new BatchTraced(
                "Batch 31, Hot sausage", "Pooled. Released Thu 26 Nov, 3:10 PM",
                [new Fact("Lug 14, Job 1042, Rosa Lindqvist", "12.00 lb"), new Fact("Lug 15, Job 1043, Ben Roth", "9.00 lb"), new Fact("Added fat", "7.00 lb"), new Fact("Everything else weighed in", "0.56 lb")],
                [new Fact("In the mixer", "28.56 lb"), new Fact("Lost on the way", "0.56 lb"), new Fact("Finished", "28.00 lb")],
                [new Fact("Job 1042, Rosa Lindqvist", "16.00 lb"), new Fact("Job 1043, Ben Roth", "12.00 lb"), new Fact("Together", "28.00 lb")]),
        ],
        [s_agency, Disease]);

    public static readonly TraceSheet Extreme = Ordinary with
    {
        Shop = LongShop,
        What = Many("Jalapeño and cheese snack stick, mild, in the small casing", 3),
        By = LongName,
        Holds = [Pending, NoTag, .. Ordinary.Holds],
        ToTell = [.. Enumerable.Range(1, 30).Select(i => new OwnerToTell(i == 1 ? LongName : LongWord, $"2026-1042{i}", "+1 (555) 010-0142 ext. 12345", "12 handed over, 11 here", i % 2 == 0 ? "" : Many("No answer, Tue 1 Dec, 1:40 PM, NH: rang twice.", 4), IsTold: i % 3 == 0))],
        Still = [Many("In the kitchen: Batch 31, Jalapeño and cheese snack stick.", 5), LongWord],
        Boxes = [.. Enumerable.Range(1, 40).Select(i => new BoxTraced($"Box {i} of job 2026-104217, {LongName}", Code, Many("Jalapeño and cheese snack stick, 1,112 packs;", 3), "1,112.50 lb", Many("Unpacked Fri 27 Nov, 4:00 PM:", 3) + LongWord))],
        Animals = [.. Enumerable.Range(1, 12).Select(i => new AnimalTraced($"White-tail deer, tag {LongWord}", $"{LongName}, job 104{i}\n{LongName}, job 105{i}", Many("Wed 25 Nov", 3), Many("Hunter will call with the result", 3)))],
        Lugs = [.. Enumerable.Range(1, 20).Select(i => new LugTraced($"Lug {i}, filled Wed 25 Nov", $"Job 1042, {LongName}", LongWord, "1,120.00 lb", Many("12.00 lb into batch 31, load 1; no place in that batch\n", 6)))],
        Lots = [.. Enumerable.Range(1, 8).Select(i => new LotTraced($"{LongWord}, lot {i}", Many("Example Supply", 4), Many("200.0 g into batch 31, load 1\n", 5)))],
        Batches = [.. Enumerable.Range(1, 4).SelectMany(_ => Ordinary.Batches.Select(batch => batch with { Batch = Many(batch.Batch, 3), State = Many(batch.State, 6), In = [.. batch.In, new Fact(LongWord, "(1,125.00 lb)")] }))],
        Cautions = [s_agency, Disease, Lead],
    };
}
