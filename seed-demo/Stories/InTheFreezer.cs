using ProcessorDesk.Records;

namespace ProcessorDesk.SeedDemo;

/// <summary>What waits to be fetched, all of it or the rest of it, and what is made and not boxed yet.</summary>
internal static class InTheFreezer
{
    private static readonly DemoAsk[] s_ringAndPlain = [DemoAsk.OwnLean(DemoProducts.Ring, 10m), DemoAsk.Rest(DemoProducts.Plain)];

    public static void Tell(Season season)
    {
        Unclaimed(season);
        Ready(season);
        PartlyGone(season);
        ToBox(season);
    }

    /// <summary>In boxes for longer than the shop waits before it chases an owner.</summary>
    private static void Unclaimed(Season season) => new DemoJob(season, DemoCast.Eudora)
        .TakeIn(62, 11, 25, [DemoAnimal.Deer("NF-20012", 87.5m, Sex.Female)], "all-grind", [DemoAsk.Finished(DemoProducts.Breakfast, 15m), DemoAsk.Rest(DemoProducts.Plain)], -48)
        .Hang(62, 12, 0, "B1", 65.5m)
        .Cut(58, 9, [18.92m, 17.66m]).Agree(58, 11, 0)
        .Made(57, DemoProducts.Breakfast, DemoProducts.Plain).BoxAll(55, 9, 0, "Freezer 2, shelf 4", DemoProducts.Breakfast, DemoProducts.Plain)
        .Invoice(55, 11, 0);

    /// <summary>One is paid; one owes and has antlers and cape to fetch; of one an invoice was credited and issued again.</summary>
    private static void Ready(Season season)
    {
        new DemoJob(season, DemoCast.Nils)
            .TakeIn(22, 8, 50, [DemoAnimal.Deer("SR-11795", 93.5m)], "all-grind", s_ringAndPlain, -1)
            .Hang(22, 9, 25, "B1", 71m)
            .Cut(18, 8, [22.37m, 20.08m], bone: 19.87m, discard: 6.98m).Agree(18, 10, 0)
            .Made(17, DemoProducts.Ring, DemoProducts.Plain).BoxAll(12, 9, 0, "Freezer 1, shelf 1", DemoProducts.Ring, DemoProducts.Plain)
            .Invoice(3, 14, 0).Pay(2, 11, 5, PaymentMethod.Check);
        new DemoJob(season, DemoCast.Joaquin)
            .TakeIn(19, 9, 30, [DemoAnimal.Deer("NF-20502", 144.5m, Sex.Male, PartKind.Antlers, PartKind.Cape)], "mixed",
                [DemoAsk.OwnLean(DemoProducts.Ring, 15m), DemoAsk.Finished(DemoProducts.Summer, 12m), DemoAsk.Rest(DemoProducts.Plain)], -2)
            .Hang(19, 10, 10, "B2", 107m).Chilled(18, 7, 45, "B2", 105.5m)
            .Cut(15, 8, [29.95m, 11.86m], cuts: [("Backstrap", 5.22m), ("Steaks and roasts", 12.18m)]).Agree(15, 13, 20)
            .Made(14, DemoProducts.Ring, DemoProducts.Summer, DemoProducts.Plain)
            .BoxAll(4, 9, 0, "Freezer 1, shelf 3", DemoJob.CutsName, DemoProducts.Ring, DemoProducts.Summer, DemoProducts.Plain).Invoice(2, 11, 0);
        new DemoJob(season, DemoCast.Odette)
            .TakeIn(17, 11, 5, [DemoAnimal.Deer("NF-20533", 112.5m, Sex.Female)], "all-grind", [DemoAsk.Finished(DemoProducts.Hot, 20m), DemoAsk.Rest(DemoProducts.Plain)], 3)
            .Hang(17, 11, 40, "B3", 84.5m)
            .Cut(13, 8, [27.29m, 18.24m], bone: 27.34m, discard: 9.60m).Agree(13, 10, 0)
            .Made(12, DemoProducts.Hot, DemoProducts.Plain).BoxAll(5, 9, 0, "Freezer 2, shelf 2", DemoProducts.Hot, DemoProducts.Plain)
            .Invoice(4, 9, 0).Credit(3, 9, 20).Invoice(3, 9, 30);
    }

    /// <summary>Of one the cuts are gone and the sausage came later, on an invoice of its own; of one only the antlers are still here.</summary>
    private static void PartlyGone(Season season)
    {
        var coralie = new DemoJob(season, DemoCast.Coralie)
            .TakeIn(21, 13, 40, [DemoAnimal.Deer("NF-20489", 95.5m)], "mixed", s_ringAndPlain, -3)
            .Hang(21, 14, 15, "B5", 72.5m)
            .Cut(16, 8, [16.90m, 9.42m], cuts: [("Backstrap", 4.72m), ("Steaks and roasts", 11.03m)]).Agree(16, 10, 30)
            .Made(15, DemoProducts.Plain).Box(14, 9, 0, "Freezer 2, shelf 3", DemoJob.CutsName, DemoProducts.Plain)
            .Invoice(13, 9, 0).PayAndHandOver(12, 10, 20);
        new DemoBatch(season, DemoProducts.Ring, coralie).MakeByLetter(9);
        coralie.BoxAll(5, 10, 0, "Freezer 2, shelf 3", DemoProducts.Ring).Invoice(4, 13, 30);
        new DemoJob(season, DemoCast.Tamsin)
            .TakeIn(28, 15, 0, [DemoAnimal.Deer("SR-11688", 117.5m, Sex.Male, PartKind.Antlers)], "steaks", [DemoAsk.Rest(DemoProducts.Plain)], -12)
            .Hang(28, 15, 30, "A2", 87m)
            .Cut(24, 8, [23.10m], cuts: [("Backstrap", 7.90m), ("Steaks and roasts", 18.45m)], bone: 26.24m, discard: 9.22m).Agree(24, 10, 0)
            .Made(23, DemoProducts.Plain).BoxAll(22, 9, 0, "Freezer 1, shelf 4", DemoJob.CutsName, DemoProducts.Plain)
            .Invoice(21, 9, 0).PayAndHandOver(7, 14, 25, parts: false);
    }

    /// <summary>Of one nothing is in boxes yet, of one the cuts alone.</summary>
    private static void ToBox(Season season)
    {
        new DemoJob(season, DemoCast.Marta)
            .TakeIn(16, 10, 20, [DemoAnimal.Deer("NF-20548", 82.5m, Sex.Female)], "all-grind", [DemoAsk.Finished(DemoProducts.Breakfast, 12m), DemoAsk.Rest(DemoProducts.Plain)], 2)
            .Hang(16, 10, 55, "C3", 62m)
            .Cut(10, 8, [19.33m, 14.77m]).Agree(9, 9, 0).Made(1, DemoProducts.Breakfast, DemoProducts.Plain);
        new DemoJob(season, DemoCast.Ansel)
            .TakeIn(14, 16, 10, [DemoAnimal.Deer("SR-11892", 87.5m)], "mixed", [DemoAsk.Rest(DemoProducts.Hot)], 4)
            .Hang(14, 16, 40, "C5", 66.5m)
            .Cut(9, 8, [20.46m], cuts: [("Backstrap", 5.66m), ("Steaks and roasts", 13.19m)], bone: 18.94m, discard: 6.65m).Agree(8, 9, 0)
            .Made(2, DemoProducts.Hot).Box(1, 10, 30, "Freezer 1, shelf 2", DemoJob.CutsName);
    }
}
