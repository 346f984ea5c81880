using ProcessorDesk.Records;
using ProcessorDesk.Trade;

namespace ProcessorDesk.SeedDemo;

/// <summary>What hangs.</summary>
internal static class InTheCooler
{
    private static readonly DemoAsk[] s_plain = [DemoAsk.Rest(DemoProducts.Plain)];

    public static void Tell(Season season)
    {
        Game(season);
        Livestock(season);
    }

    /// <summary>Hung past the guidance; an elk; a test without its result; no tag; and one with a ticket and no details.</summary>
    private static void Game(Season season)
    {
        new DemoJob(season, DemoCast.Luther)
            .TakeIn(9, 16, 0, [DemoAnimal.Deer("NF-20611", 126.0m)], "mixed", [DemoAsk.OwnLean(DemoProducts.Ring, 15m), DemoAsk.Finished(DemoProducts.Summer, 12m), DemoAsk.Rest(DemoProducts.Plain)], 1)
            .Hang(9, 16, 25, "D1", 94.5m).Chilled(8, 7, 30, "D1", 93.0m);
        var elk = new TakenAnimal(Species.Elk, ArrivalState.FieldDressed)
        {
            Tag = "E-0457",
            Sex = Sex.Male,
            ArrivalWeight = Weight.FromPounds(412m),
            HarvestedOn = season.Day(6),
            Area = "Unit 12",
            Parts = [PartKind.Antlers],
        };
        new DemoJob(season, DemoCast.Imogen)
            .TakeIn(4, 10, 15, [elk], "mixed", [DemoAsk.Finished(DemoProducts.Summer, 40m), DemoAsk.Rest(DemoProducts.Plain)], 12, deposit: 100m)
            .Hang(4, 11, 0, "E1", 301.0m);
        new DemoJob(season, DemoCast.Bruno)
            .TakeIn(3, 12, 40, [DemoAnimal.Deer("SR-11956", 117.5m, Sex.Male, PartKind.Head) with { DiseaseTest = DiseaseTest.Pending, SampleNumber = "W-3391" }], "all-grind", s_plain, 14)
            .Hang(3, 13, 10, "D3", 87.0m);
        new DemoJob(season, DemoCast.Sabine)
            .TakeIn(2, 9, 50, [DemoAnimal.Deer(null, 101.0m, Sex.Female)], "steaks", s_plain, 12).Hang(2, 10, 15, "D4", 75.5m);
        new DemoJob(season, DemoCast.Gus).TakeIn(0, 7, 30, [DemoAnimal.Deer("NF-20702", 108.0m)], "all-grind", [], 14, deposit: 0m, whole: false);
    }

    /// <summary>The hog in two halves, the beef in a half and two quarters, and a lamb: livestock of several owners.</summary>
    private static void Livestock(Season season)
    {
        var (half, quarter) = (Ratio.Of(1, 2), Ratio.Of(1, 4));
        var hog = new DemoJob(season, DemoCast.Ansel)
            .TakeIn(2, 7, 30, [DemoAnimal.Whole(Species.Hog, "H-118", 262m)], "mixed", [DemoAsk.Rest(DemoProducts.Breakfast)], 9);
        hog.ShareWith(2, 7, 45, DemoCast.Coralie, (half, half), "mixed", s_plain);
        hog.Hang(2, 9, 30, "F1", 184.5m);

        var beef = new DemoJob(season, DemoCast.Rufus)
            .TakeIn(8, 7, 20, [DemoAnimal.Whole(Species.Beef, "B-031", 1240m) with { CattleAge = CattleAge.UnderThirtyMonths }], "mixed", s_plain, 8, deposit: 200m);
        var second = beef.ShareWith(8, 7, 40, DemoCast.Mabel, (half, quarter), "steaks", s_plain);
        beef.ShareWith(8, 7, 55, DemoCast.Silas, (half, quarter), "all-grind", s_plain, third: second);
        beef.Hang(8, 9, 45, "G1", 756.0m);

        new DemoJob(season, DemoCast.Greta)
            .TakeIn(1, 8, 15, [DemoAnimal.Whole(Species.Lamb, "L-207", 121m)], "mixed", s_plain, 10).Hang(1, 10, 0, "F3", 63.5m);
    }
}
