using ProcessorDesk.Records;

namespace ProcessorDesk.SeedDemo;

/// <summary>Trim to split, splits agreed and waiting for a batch, and a job on the table.</summary>
internal static class AtTheGrind
{
    private static readonly DemoAsk[] s_summerAndPlain = [DemoAsk.Finished(DemoProducts.Summer, 14m), DemoAsk.Rest(DemoProducts.Plain)];

    public static void Tell(Season season)
    {
        Waiting(season);
        ToSplit(season);
        OnTheTable(season);
    }

    /// <summary>Two agreed to pooling; of one the manager found that the owner disputes the weight.</summary>
    private static void Waiting(Season season)
    {
        new DemoJob(season, DemoCast.Coralie)
            .TakeIn(10, 10, 10, [DemoAnimal.Deer("NF-20590", 85m, Sex.Female)], "all-grind", s_summerAndPlain, 7, pooling: Pooling.Pooled)
            .Hang(10, 10, 45, "D6", 64.5m).Cut(5, 8, [18.43m, 16.27m], bone: 20.91m, discard: 7.34m).Agree(4, 9, 30);
        new DemoJob(season, DemoCast.Rufus)
            .TakeIn(10, 13, 0, [DemoAnimal.Deer("SR-11918", 86.5m)], "all-grind", s_summerAndPlain, 7, pooling: Pooling.Pooled)
            .Hang(10, 13, 35, "D7", 64m).Cut(5, 10, [20.05m, 17.11m]).Agree(4, 9, 40);
        new DemoJob(season, DemoCast.Luther)
            .TakeIn(12, 15, 30, [DemoAnimal.Deer("NF-20575", 94.5m)], "all-grind", [DemoAsk.Rest(DemoProducts.Breakfast)], 2)
            .Hang(12, 16, 0, "D8", 71m).Cut(6, 13, [21.90m, 18.66m], bone: 21.26m, discard: 7.48m).Agree(5, 10, 0)
            .Hold(3, 11, 30, HoldReason.Dispute, "Says it should be more; the rail weight is to be shown to him");
    }

    /// <summary>One owner wants no pork; another asked for more than the trim bears.</summary>
    private static void ToSplit(Season season)
    {
        new DemoJob(season, DemoCast.Priya)
            .TakeIn(12, 13, 20, [DemoAnimal.Deer("NF-20571", 92m, Sex.Female)], "steaks", [DemoAsk.Rest(DemoProducts.BeefFat)], 5, noPork: true, notes: "Call before any change")
            .Hang(12, 13, 50, "C1", 70m).Cut(4, 8, [23.34m], cuts: [("Backstrap", 4.53m), ("Steaks and roasts", 10.57m)]);
        new DemoJob(season, DemoCast.Tobias)
            .TakeIn(11, 15, 10, [DemoAnimal.Deer("NF-20580", 64m, Sex.Female)], "all-grind", [DemoAsk.OwnLean(DemoProducts.Ring, 30m), DemoAsk.Finished(DemoProducts.Hot, 15m)], 3)
            .Hang(11, 15, 40, "C2", 47.5m).Cut(3, 8, [28.08m], bone: 13.53m, discard: 4.75m);
    }

    /// <summary>Today: one weight was struck out, and half its lugs are still to come.</summary>
    private static void OnTheTable(Season season) => new DemoJob(season, DemoCast.Hanne)
        .TakeIn(6, 9, 5, [DemoAnimal.Deer("SR-11921", 133.0m), DemoAnimal.Deer("SR-11922", 88.5m, Sex.Female)], "all-grind",
            [DemoAsk.OwnLean(DemoProducts.Ring, 15m), DemoAsk.Finished(DemoProducts.Summer, 12m), DemoAsk.Rest(DemoProducts.Plain)], 6)
        .Hang(6, 9, 40, "C4", 99.5m, 66.5m)
        .StartCutting(0, 7, 15).Tick(0, 7, 20)
        .Lean(0, 7, 45, 35.10m, 0).StrikeLast(0, 7, 47, "read off before the lug was still").Lean(0, 7, 55, 25.25m, 0);
}
