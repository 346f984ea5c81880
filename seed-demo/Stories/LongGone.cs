using ProcessorDesk.Records;
using ProcessorDesk.Trade;

namespace ProcessorDesk.SeedDemo;

/// <summary>What left the shop weeks ago: the last of the season before at its prices, and the first of this one.</summary>
internal static class LongGone
{
    public static void Tell(Season season)
    {
        LastSeason(season);
        new DemoJob(season, DemoCast.Nils)
            .TakeIn(66, 9, 20, [DemoAnimal.Deer("SR-11402", 94.5m)], "all-grind", [DemoAsk.Finished(DemoProducts.Hot, 20m)], -52)
            .Hang(66, 9, 55, "A2", 70m)
            .Cut(63, 8, [21.48m, 19.07m]).Agree(63, 10, 10)
            .Made(62, DemoProducts.Hot, DemoProducts.Plain).BoxAll(61, 9, 0, "Freezer 1, shelf 1", DemoProducts.Hot, DemoProducts.Plain)
            .Invoice(61, 11, 0).PayAndHandOver(59, 10, 40);
        new DemoJob(season, DemoCast.Tobias)
            .TakeIn(55, 14, 5, [DemoAnimal.Deer("NF-20077", 110.5m)], "mixed", [DemoAsk.OwnLean(DemoProducts.Ring, 12m), DemoAsk.Rest(DemoProducts.Summer)], -41)
            .Hang(55, 14, 40, "A3", 83m).Chilled(53, 7, 40, "A3", 82m)
            .Cut(52, 9, [15.62m, 14.20m], cuts: [("Backstrap", 5.12m), ("Steaks and roasts", 11.93m)], bone: 24.54m, discard: 8.62m).Agree(52, 11, 0)
            .Made(50, DemoProducts.Ring, DemoProducts.Summer)
            .BoxAll(47, 9, 0, "Freezer 1, shelf 2", DemoJob.CutsName, DemoProducts.Ring, DemoProducts.Summer)
            .Invoice(47, 11, 0).PayAndHandOver(43, 15, 10);
        var lambs = new DemoJob(season, DemoCast.Mabel)
            .TakeIn(52, 7, 40, [DemoAnimal.Whole(Species.Lamb, "L-188", 118m), DemoAnimal.Whole(Species.Lamb, "L-189", 109m)], "mixed", [DemoAsk.Rest(DemoProducts.Plain)], -40)
            .Hang(52, 9, 30, "F1", 61.5m, 56.5m);
        lambs.Cut(49, 10, [11.84m, 9.96m], cuts: [("Chops", 20.52m), ("Legs and shoulders", 47.88m)], bone: 21.47m, discard: 3.50m).Agree(49, 13, 0)
            .Made(48, DemoProducts.Plain).BoxAll(47, 10, 0, "Freezer 2, shelf 1", DemoJob.CutsName, DemoProducts.Plain)
            .Invoice(46, 9, 0).PayAndHandOver(44, 11, 20);
        new DemoJob(season, DemoCast.Priya)
            .TakeIn(48, 12, 15, [DemoAnimal.Deer("NF-20131", 91m, Sex.Female)], "steaks", [DemoAsk.Rest(DemoProducts.BeefFat)], -34, noPork: true)
            .Hang(48, 12, 50, "A4", 67.5m)
            .Cut(45, 8, [25.15m], cuts: [("Backstrap", 4.38m), ("Steaks and roasts", 10.22m)], bone: 19.34m, discard: 6.79m).Agree(45, 10, 0)
            .Made(44, DemoProducts.BeefFat).BoxAll(43, 9, 30, "Freezer 1, shelf 3", DemoJob.CutsName, DemoProducts.BeefFat)
            .Invoice(42, 9, 0).PayAndHandOver(38, 16, 0);
    }

    private static void LastSeason(Season season)
    {
        new DemoJob(season, DemoCast.Greta)
            .TakeIn(81, 8, 15, [DemoAnimal.Whole(Species.Lamb, "L-171", 114m)], "mixed", [DemoAsk.Rest(DemoProducts.Plain)], -70, deposit: 0m)
            .Hang(81, 10, 0, "F2", 59.5m)
            .Cut(79, 8, [10.73m], cuts: [("Chops", 10.88m), ("Legs and shoulders", 25.37m)], bone: 9.54m, discard: 1.55m).Agree(79, 10, 0)
            .Made(78, DemoProducts.Plain).BoxAll(77, 9, 0, "Freezer 2, shelf 1", DemoJob.CutsName, DemoProducts.Plain)
            .Invoice(77, 11, 0).PayAndHandOver(76, 10, 15);
        new DemoJob(season, DemoCast.Silas)
            .TakeIn(80, 10, 30, [DemoAnimal.Deer("NF-19870", 100m)], "steaks", [DemoAsk.Percent(DemoProducts.Breakfast, 60m)], -68)
            .Hang(80, 11, 5, "A1", 76m)
            .Cut(77, 8, [14.38m, 12.91m], cuts: [("Backstrap", 5.49m), ("Steaks and roasts", 12.81m)], bone: 21.15m, discard: 7.44m).Agree(77, 10, 0)
            .Made(76, DemoProducts.Breakfast, DemoProducts.Plain).BoxAll(75, 9, 0, "Freezer 1, shelf 1", DemoJob.CutsName, DemoProducts.Breakfast, DemoProducts.Plain)
            .Invoice(75, 11, 0).PayAndHandOver(72, 9, 45);
    }
}
