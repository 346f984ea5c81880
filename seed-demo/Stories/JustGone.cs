using ProcessorDesk.Records;

namespace ProcessorDesk.SeedDemo;

/// <summary>What left the shop these days.</summary>
internal static class JustGone
{
    /// <summary>Two deer for one owner, all the way out of the door; and one with its heart.</summary>
    public static void Tell(Season season)
    {
        var marta = new DemoJob(season, DemoCast.Marta)
            .TakeIn(30, 9, 12, [DemoAnimal.Deer("NF-20418", 128.5m), DemoAnimal.Deer("NF-20419", 96.0m, Sex.Female)], "all-grind",
                [DemoAsk.OwnLean(DemoProducts.Ring, 25m), DemoAsk.Finished(DemoProducts.Summer, 20m), DemoAsk.Finished(DemoProducts.Hot, 15m), DemoAsk.Rest(DemoProducts.Plain)], -9)
            .Hang(30, 10, 5, "A1", 96.5m, 72.0m).Chilled(28, 7, 40, "A1", 95.0m, 71.0m)
            .StartCutting(27, 8, 0).Tick(27, 8, 10)
            .Lean(27, 8, 40, 31.51m, 0).Lean(27, 9, 5, 26.36m, 0).Lean(27, 9, 50, 19.44m, 1).Lean(27, 10, 15, 15.67m, 1)
            .Loose(27, 10, 30, WeighInKind.Bone, 52.05m).Loose(27, 10, 34, WeighInKind.Discard, 16.90m, "sinew, fat and bloodshot")
            .FinishCutting(27, 10, 45).Agree(26, 8, 20);
        marta.Made(25, DemoProducts.Ring, DemoProducts.Summer, DemoProducts.Hot, DemoProducts.Plain)
            .BoxAll(20, 9, 0, "Freezer 1, shelf 1", DemoProducts.Ring, DemoProducts.Summer, DemoProducts.Hot, DemoProducts.Plain)
            .Invoice(12, 9, 15).PayAndHandOver(10, 16, 10);
        new DemoJob(season, DemoCast.Leta)
            .TakeIn(24, 10, 2, [DemoAnimal.Deer("NF-20466", 101.5m, Sex.Male, PartKind.Heart)], "steaks", [DemoAsk.Percent(DemoProducts.Breakfast, 50m)], -10, deposit: 0m)
            .Hang(24, 10, 40, "A4", 77m)
            .Cut(21, 8, [21.80m], cuts: [("Backstrap", 5.96m), ("Steaks and roasts", 13.89m)], bone: 24.79m, discard: 8.71m).Agree(21, 11, 0)
            .Made(20, DemoProducts.Breakfast, DemoProducts.Plain).GivePart(20, 11, 0, PartKind.Heart, "Leta Vandermolen")
            .BoxAll(19, 9, 0, "Freezer 1, shelf 2", DemoJob.CutsName, DemoProducts.Breakfast, DemoProducts.Plain)
            .Invoice(14, 14, 0).PayAndHandOver(6, 10, 30);
    }
}
