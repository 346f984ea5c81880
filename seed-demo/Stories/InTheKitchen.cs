using ProcessorDesk.Records;

namespace ProcessorDesk.SeedDemo;

/// <summary>Batches on their way: planned, drawn from, resting, rested, pooled in the smokehouse, to release, and two on hold.</summary>
internal static class InTheKitchen
{
    private static readonly DemoAsk[] s_ringAndPlain = [DemoAsk.OwnLean(DemoProducts.Ring, 12m), DemoAsk.Rest(DemoProducts.Plain)];
    private static readonly DemoAsk[] s_summer = [DemoAsk.Rest(DemoProducts.Summer)];

    public static void Tell(Season season)
    {
        Planned(season);
        Mixing(season);
        Rested(season);
        Pooled(season);
        ToRelease(season);
        HeldByItsRecord(season);
        WrongLugIn(season);
    }

    private static void Planned(Season season)
    {
        var leta = new DemoJob(season, DemoCast.Leta)
            .TakeIn(13, 9, 40, [DemoAnimal.Deer("NF-20567", 93m)], "all-grind", [DemoAsk.Finished(DemoProducts.Hot, 18m), DemoAsk.Rest(DemoProducts.Plain)], 3)
            .Hang(13, 10, 15, "C6", 69m).Cut(8, 10, [20.64m, 17.90m]).Agree(7, 9, 30);
        new DemoBatch(season, DemoProducts.Hot, leta).Plan(season.At(0, 7, 40));
        new DemoBatch(season, DemoProducts.Plain, leta).Plan(season.At(0, 7, 42));
    }

    /// <summary>One has its first load mixed and meat of the second in; one rests, its owner's cuts gone already.</summary>
    private static void Mixing(Season season)
    {
        var mabel = new DemoJob(season, DemoCast.Mabel)
            .TakeIn(12, 10, 35, [DemoAnimal.Deer("SR-11904", 85.5m)], "all-grind", s_summer, 2)
            .Hang(12, 11, 10, "C7", 64m).Cut(7, 10, [22.05m, 16.48m], bone: 17.71m, discard: 6.22m).Agree(6, 8, 30);
        new DemoBatch(season, DemoProducts.Summer, mabel)
            .Plan(season.At(1, 15, 10)).Draw(season.JustNow(40), 1).Mix(season.JustNow(30), 1).Draw(season.JustNow(8), 2);
        var silas = new DemoJob(season, DemoCast.Silas)
            .TakeIn(15, 14, 20, [DemoAnimal.Deer("NF-20555", 98m)], "mixed", s_summer, 1)
            .Hang(15, 14, 55, "C8", 74.5m).Cut(9, 10, [20.18m], cuts: [("Backstrap", 6.48m), ("Steaks and roasts", 15.12m)]).Agree(8, 10, 0)
            .Box(7, 9, 0, "Freezer 2, shelf 2", DemoJob.CutsName).Invoice(6, 9, 0).PayAndHandOver(5, 15, 30);
        new DemoBatch(season, DemoProducts.Summer, silas).Plan(season.At(1, 15, 0)).Fill(season.JustNow(55));
    }

    private static void Rested(Season season)
    {
        var tamsin = new DemoJob(season, DemoCast.Tamsin)
            .TakeIn(13, 15, 25, [DemoAnimal.Deer("SR-11899", 80.5m, Sex.Female)], "all-grind", [DemoAsk.Rest(DemoProducts.Ring)], 5)
            .Hang(13, 15, 55, "C9", 59.5m).Cut(7, 13, [17.05m, 15.12m], bone: 19.17m, discard: 6.73m).Agree(6, 9, 0);
        new DemoBatch(season, DemoProducts.Ring, tamsin).Plan(season.At(1, 9, 0)).Fill(season.At(1, 9, 10));
    }

    /// <summary>Three owners who agreed to it; since this morning in the smokehouse.</summary>
    private static void Pooled(Season season)
    {
        var wendell = new DemoJob(season, DemoCast.Wendell)
            .TakeIn(15, 8, 45, [DemoAnimal.Deer("SR-11870", 76m)], "all-grind", s_ringAndPlain, 4, pooling: Pooling.Pooled)
            .Hang(15, 9, 20, "B4", 57m).Cut(11, 8, [19.61m, 13.48m]).Agree(10, 8, 15);
        var nils = new DemoJob(season, DemoCast.Nils)
            .TakeIn(14, 9, 15, [DemoAnimal.Deer("SR-11885", 77.5m)], "all-grind", s_ringAndPlain, 4, pooling: Pooling.Pooled)
            .Hang(14, 9, 50, "B6", 59m).Cut(11, 10, [21.22m, 12.30m], bone: 17.81m, discard: 6.25m).Agree(10, 8, 25);
        var odette = new DemoJob(season, DemoCast.Odette)
            .TakeIn(14, 11, 30, [DemoAnimal.Deer("NF-20559", 70.5m, Sex.Female)], "all-grind", s_ringAndPlain, 5, pooling: Pooling.Pooled)
            .Hang(14, 12, 5, "B7", 52m).Cut(11, 13, [15.94m, 12.61m]).Agree(10, 8, 35);
        new DemoBatch(season, DemoProducts.Ring, wendell, nils, odette)
            .Plan(season.At(1, 11, 0)).Fill(season.At(1, 11, 20))
            .Step(season.At(0, 7, 10), BatchStepKind.Stuffed).Step(season.At(0, 7, 20), BatchStepKind.HeatStarted)
            .Note(season.At(0, 7, 52), ReadingStage.Cooking, season.At(0, 7, 20), DemoReadings.FirstHalfHour);
        wendell.Made(4, DemoProducts.Plain);
        nils.Made(4, DemoProducts.Plain);
        odette.Made(3, DemoProducts.Plain);
    }

    private static void ToRelease(Season season)
    {
        var joaquin = new DemoJob(season, DemoCast.Joaquin)
            .TakeIn(13, 11, 45, [DemoAnimal.Deer("NF-20568", 82m)], "mixed", [DemoAsk.Rest(DemoProducts.Ring)], 3)
            .Hang(13, 12, 20, "C10", 61.5m).Cut(6, 8, [18.27m], cuts: [("Backstrap", 5.38m), ("Steaks and roasts", 12.57m)], bone: 17.61m, discard: 6.19m).Agree(6, 10, 0);
        new DemoBatch(season, DemoProducts.Ring, joaquin).Smoke(3).Finish(season.At(0, 7, 45));
    }

    /// <summary>The chart ran out in the smokehouse, so nobody knows how long the meat was hot.</summary>
    private static void HeldByItsRecord(Season season)
    {
        var rufus = new DemoJob(season, DemoCast.Rufus)
            .TakeIn(20, 9, 0, [DemoAnimal.Deer("SR-11822", 94m)], "all-grind", [DemoAsk.Finished(DemoProducts.Summer, 25m), DemoAsk.Rest(DemoProducts.Plain)], 0)
            .Hang(20, 9, 35, "B8", 71.5m).Cut(14, 8, [23.71m, 16.28m]).Agree(13, 11, 0).Made(12, DemoProducts.Plain);
        new DemoBatch(season, DemoProducts.Summer, rufus).Smoke(6, withGap: true).Finish(season.At(4, 8, 0))
            .Hold(season.At(4, 8, 40), HoldReason.RecordIncomplete, "No readings from 131 to 154 °F");
    }

    /// <summary>A lug of a waiting job was tipped into another owner's load.</summary>
    private static void WrongLugIn(Season season)
    {
        var greta = new DemoJob(season, DemoCast.Greta)
            .TakeIn(11, 9, 10, [DemoAnimal.Deer("SR-11915", 82.5m)], "all-grind", s_ringAndPlain, 6)
            .Hang(11, 9, 45, "D5", 61m).Cut(6, 10, [21.14m, 15.52m], bone: 16.93m, discard: 5.95m).Agree(5, 9, 0);
        var hanne = new DemoJob(season, DemoCast.Hanne)
            .TakeIn(16, 15, 50, [DemoAnimal.Deer("SR-11860", 79.5m)], "all-grind", [DemoAsk.Rest(DemoProducts.Hot)], 1)
            .Hang(16, 16, 20, "C2", 59.5m).Cut(8, 13, [20.36m, 13.08m]).Agree(7, 10, 0);
        new DemoBatch(season, DemoProducts.Hot, hanne).Plan(season.At(1, 13, 0)).Draw(season.At(1, 13, 20), 1)
            .WrongLug(season.At(1, 13, 30), greta, 6.20m, "two lugs stood side by side on the cart");
    }
}
