using ProcessorDesk.Records;

namespace ProcessorDesk.SeedDemo;

/// <summary>Fills an empty file with a made-up shop in mid-season, through the same verbs the pages use, ending today.</summary>
public static class DemoSeason
{
    public static void Fill(RecordsContext records, WriteGate gate, TimeProvider clock)
    {
        if (records.Shop.Any())
            return;
        StartingShop.Lay(records, new Verbs(records, gate, clock), "Nettlefork Custom Meats", "America/Chicago", isDemo: true);
    }
}
