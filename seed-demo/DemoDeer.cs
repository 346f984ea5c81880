using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;

namespace ProcessorDesk.SeedDemo;

/// <summary>The season's deer and elk, one owner's story after the other, from the door to wherever it is today.</summary>
internal static class DemoDeer
{
    private static readonly (string, AskKind, decimal)[] s_sausages =
        [(DemoProducts.Ring, AskKind.OwnLean, 15m), (DemoProducts.Summer, AskKind.Finished, 12m), (DemoProducts.Plain, AskKind.Rest, 0m)];

    public static void Tell(Season season)
    {
        Gone(season);
        AtPickup(season);
        AtTheGrind(season);
        AtTheTable(season);
        InTheCooler(season);
    }

    /// <summary>Two deer pooled for one owner, all the way out of the door; and one more with its heart.</summary>
    private static void Gone(Season season)
    {
        new DemoJob(season, DemoCast.Marta)
            .TakeIn(30, 9, 12, [Deer("NF-20418", 128.5m), Deer("NF-20419", 96.0m, Sex.Female)], "all-grind", [(DemoProducts.Ring, AskKind.OwnLean, 25m), (DemoProducts.Summer, AskKind.Finished, 20m), (DemoProducts.Hot, AskKind.Finished, 15m), (DemoProducts.Plain, AskKind.Rest, 0m)], -9)
            .Hang(30, 10, 5, "A1", 96.5m, 72.0m).Chilled(28, 7, 40, "A1", 95.0m, 71.0m)
            .StartCutting(27, 8, 0)
            .Lean(27, 8, 40, 1, 34.61m, 0).Lean(27, 9, 5, 2, 29.46m, 0).Lean(27, 9, 50, 3, 22.30m, 1).Lean(27, 10, 15, 4, 18.77m, 1)
            .Loose(27, 10, 30, WeighInKind.Bone, 41.35m).Loose(27, 10, 34, WeighInKind.Discard, 6.20m, "bloodshot")
            .FinishCutting(27, 10, 45).Agree(26, 8, 20).MakeAll(25, 9, 0).BoxAll(12, 9, 0, "Shelf 1").Invoice(10, 9, 15).PayAndHandOver(10, 16, 10);
        new DemoJob(season, DemoCast.Leta)
            .TakeIn(24, 10, 2, [Deer("NF-20466", 112.0m, parts: [PartKind.Heart])], "steaks", [(DemoProducts.Breakfast, AskKind.Percent, 50m)], -10, deposit: 0m)
            .Hang(24, 10, 40, "A4", 84.0m)
            .StartCutting(21, 8, 5).Lean(21, 9, 0, 5, 24.90m).Loose(21, 9, 20, WeighInKind.CutPack, 19.85m, "Steaks", 14).Loose(21, 9, 40, WeighInKind.Bone, 27.10m)
            .FinishCutting(21, 9, 50).Agree(21, 11, 0).MakeAll(20, 8, 0).BoxAll(9, 9, 0, "Shelf 2").GivePart(20, 9, 0, PartKind.Heart, "Leta Vandermolen").Invoice(7, 14, 0).PayAndHandOver(6, 10, 30);
    }

    /// <summary>One owes a balance and has antlers and cape to fetch; one invoice was credited and issued again; one is not invoiced.</summary>
    private static void AtPickup(Season season)
    {
        new DemoJob(season, DemoCast.Joaquin)
            .TakeIn(19, 9, 30, [Deer("NF-20502", 141.0m, parts: [PartKind.Antlers, PartKind.Cape])], "mixed", s_sausages, -2)
            .Hang(19, 10, 10, "B2", 105.5m).Chilled(18, 7, 45, "B2", 104.0m)
            .StartCutting(15, 8, 10).Lean(15, 9, 0, 6, 33.05m).Lean(15, 9, 25, 7, 14.72m).Loose(15, 9, 45, WeighInKind.CutPack, 17.40m, "Roasts and chops", 11)
            .FinishCutting(15, 10, 0).Agree(15, 13, 20).MakeAll(14, 8, 0).BoxAll(4, 9, 0, "Shelf 3").Invoice(2, 11, 0);
        new DemoJob(season, DemoCast.Odette)
            .TakeIn(17, 11, 5, [Deer("NF-20533", 104.5m, Sex.Female)], "all-grind", [(DemoProducts.Hot, AskKind.Finished, 20m)], -3)
            .Hang(17, 11, 40, "B3", 78.5m)
            .StartCutting(13, 8, 0).Lean(13, 8, 50, 8, 30.15m).Lean(13, 9, 15, 9, 21.34m)
            .FinishCutting(13, 9, 30).Agree(13, 10, 0).MakeAll(12, 8, 0).Invoice(4, 9, 0).Credit(3, 9, 20).Invoice(3, 9, 30);
        new DemoJob(season, DemoCast.Wendell)
            .TakeIn(15, 8, 45, [Deer("SR-11870", 119.0m)], "all-grind", s_sausages, 4, pooling: Pooling.Pooled)
            .Hang(15, 9, 20, "B4", 89.0m)
            .StartCutting(11, 8, 0).Lean(11, 8, 45, 10, 33.71m).Lean(11, 9, 10, 11, 24.58m).Loose(11, 9, 20, WeighInKind.Bone, 24.60m)
            .FinishCutting(11, 9, 35).Agree(10, 8, 15);
    }

    /// <summary>One owner wants no pork; another asked for more than the trim bears.</summary>
    private static void AtTheGrind(Season season)
    {
        new DemoJob(season, DemoCast.Priya)
            .TakeIn(12, 13, 20, [Deer("NF-20571", 98.0m, Sex.Female)], "steaks", [(DemoProducts.BeefFat, AskKind.Rest, 0m)], 5, noPork: true, notes: "Call before any change")
            .Hang(12, 13, 50, "C1", 73.5m)
            .StartCutting(8, 8, 0).Lean(8, 8, 55, 12, 26.44m).Loose(8, 9, 10, WeighInKind.CutPack, 15.10m, "Steaks", 10).FinishCutting(8, 9, 20);
        new DemoJob(season, DemoCast.Tobias)
            .TakeIn(11, 15, 10, [Deer("NF-20580", 74.0m, Sex.Female)], "all-grind", [(DemoProducts.Ring, AskKind.OwnLean, 30m), (DemoProducts.Hot, AskKind.Finished, 15m)], 3)
            .Hang(11, 15, 40, "C2", 55.5m)
            .StartCutting(7, 8, 0).Lean(7, 8, 40, 13, 31.18m).Loose(7, 8, 50, WeighInKind.Discard, 5.85m, "bloodshot, both shoulders").FinishCutting(7, 9, 0);
    }

    /// <summary>On the table today: one weight was struck out, and half its lugs are still to come.</summary>
    private static void AtTheTable(Season season) =>
        new DemoJob(season, DemoCast.Hanne)
            .TakeIn(6, 9, 5, [Deer("SR-11921", 133.0m), Deer("SR-11922", 88.5m, Sex.Female)], "all-grind", s_sausages, 6)
            .Hang(6, 9, 40, "C4", 99.5m, 66.5m)
            .StartCutting(0, 8, 0).Lean(0, 8, 35, 14, 38.20m, 0).StrikeLast(0, 8, 37, "read off before the lug was still").Lean(0, 8, 40, 15, 28.35m, 0);

    /// <summary>Hung past the guidance; an elk; a test without its result; no tag; and one with a ticket and no details.</summary>
    private static void InTheCooler(Season season)
    {
        new DemoJob(season, DemoCast.Luther)
            .TakeIn(9, 16, 0, [Deer("NF-20611", 126.0m)], "mixed", s_sausages, 1).Hang(9, 16, 25, "D1", 94.5m).Chilled(8, 7, 30, "D1", 93.0m);
        new DemoJob(season, DemoCast.Imogen)
            .TakeIn(4, 10, 15, [new TakenAnimal(Species.Elk, ArrivalState.FieldDressed) { Tag = "E-0457", Sex = Sex.Male, ArrivalWeight = Weight.FromPounds(412m), HarvestedOn = season.Day(6), Area = "Unit 12", Parts = [PartKind.Antlers] }], "mixed", [(DemoProducts.Summer, AskKind.Finished, 40m), (DemoProducts.Plain, AskKind.Rest, 0m)], 12, deposit: 100m)
            .Hang(4, 11, 0, "E1", 301.0m);
        new DemoJob(season, DemoCast.Bruno)
            .TakeIn(3, 12, 40, [Deer("SR-11956", 117.5m) with { DiseaseTest = DiseaseTest.Pending, SampleNumber = "W-3391", Parts = [PartKind.Head] }], "all-grind", s_sausages, 14)
            .Hang(3, 13, 10, "D3", 87.0m);
        new DemoJob(season, DemoCast.Sabine)
            .TakeIn(2, 9, 50, [Deer(null, 101.0m, Sex.Female)], "steaks", [(DemoProducts.Plain, AskKind.Rest, 0m)], 12).Hang(2, 10, 15, "D4", 75.5m);
        new DemoJob(season, DemoCast.Gus).TakeIn(0, 9, 30, [Deer("NF-20702", 108.0m)], "all-grind", [], 14, deposit: 0m, whole: false);
    }

    private static TakenAnimal Deer(string? tag, decimal pounds, Sex sex = Sex.Male, IReadOnlyList<PartKind>? parts = null) =>
        new(Species.WhiteTailDeer, ArrivalState.FieldDressed)
        {
            Tag = tag,
            Sex = sex,
            ArrivalWeight = Weight.FromPounds(pounds),
            Surface = Temperature.FromFahrenheit(38m),
            DiseaseTest = DiseaseTest.NotRequired,
            Parts = parts ?? [],
        };
}
