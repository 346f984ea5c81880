using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;

namespace ProcessorDesk.SeedDemo;

/// <summary>Fills an empty file with a made-up shop in mid-season, through the same verbs the pages use, ending on the day it is filled.</summary>
public static class DemoSeason
{
    private const string Zone = "America/Chicago";

    /// <summary>Days before the last one; the price list of this season comes in force some days later.</summary>
    private const int Begins = 82;
    private const int NewPrices = 70;
    private const int Lugs = 48;

    /// <summary>Does nothing where the file holds a shop already.</summary>
    public static void Fill(RecordsContext records, WriteGate gate, TimeProvider clock)
    {
        if (records.Shop.Any())
            return;
        // One connection throughout, and no wait for the disk after each act: nobody's facts are lost with a demo that is half filled.
        records.Database.OpenConnection();
        records.Database.ExecuteSql($"PRAGMA synchronous = NORMAL");
        var season = new Season(records, gate, clock.GetUtcNow(), TimeZoneInfo.FindSystemTimeZoneById(Zone));
        SetUp(season, gate);
        DemoLarder.Receive(season);
        LongGone.Tell(season);
        JustGone.Tell(season);
        InTheFreezer.Tell(season);
        InTheKitchen.Tell(season);
        AtTheGrind.Tell(season);
        InTheCooler.Tell(season);
        season.Play();
        records.Database.CloseConnection();
    }

    private static void SetUp(Season season, WriteGate gate)
    {
        var records = season.Records;
        var opening = season.At(Begins, 7, 0);
        StartingShop.Lay(records, new Verbs(records, gate, new DemoClock { Shows = opening }), "Nettlefork Custom Meats", Zone, isDemo: true);
        season.Run(opening, "set up the demo's shop", Hand.SetUp, act =>
        {
            var shop = records.Shop.Single();
            shop.Describe(
                shop.Name, "1 Tannery Row, Nettlefork", "(262) 555-0100", Zone,
                "Meat not fetched within 30 days of our notice is given away as state rules allow. We keep your meat apart unless you agreed to pooling.", promiseDays: 14);
            shop.SetRules(TagRule.Hold, Proportion.FromPercent(5.5m), "Sales tax", Proportion.FromPercent(5m));
            shop.SetMoreAllergens(true);
            DemoStaff.Hire(records);
            DemoProducts.Make(records, act.Now);
            records.Lugs.AddRange(Enumerable.Range(1, Lugs).Select(number =>
                new Lug(number, Weight.FromPounds(number % 3 == 0 ? 2.86m : 3.10m), act.Now)));
            records.SaveChanges();
            DemoPrices.Post(records, season.Day(Begins), season.Day(NewPrices));
            return Outcome.Done();
        });
    }
}
