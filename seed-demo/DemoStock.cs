using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;

namespace ProcessorDesk.SeedDemo;

/// <summary>The hog in two halves, the beef in a half and two quarters, and a lamb: livestock of several owners.</summary>
internal static class DemoStock
{
    private static readonly (string, AskKind, decimal)[] s_plain = [(DemoProducts.Plain, AskKind.Rest, 0m)];

    public static void Tell(Season season)
    {
        var half = Ratio.Of(1, 2);
        var quarter = Ratio.Of(1, 4);

        var hog = new DemoJob(season, Person("Ansel Brightwater", "0121"))
            .TakeIn(2, 7, 30, [Whole(Species.Hog, "H-118", 262m)], "mixed", [(DemoProducts.Breakfast, AskKind.Rest, 0m)], 9);
        hog.ShareWith(2, 7, 45, Person("Coralie Umber", "0122"), (half, half), "mixed", s_plain);
        hog.Hang(2, 9, 30, "F1", 184.5m);

        var beef = new DemoJob(season, Person("Rufus Ketteridge", "0123"))
            .TakeIn(8, 7, 20, [Whole(Species.Beef, "B-031", 1240m) with { CattleAge = CattleAge.UnderThirtyMonths }], "mixed", s_plain, 8, deposit: 200m);
        var second = beef.ShareWith(8, 7, 40, Person("Mabel Oyelaran", "0124"), (half, quarter), "steaks", s_plain);
        beef.ShareWith(8, 7, 55, Person("Silas Penhallow", "0125"), (half, quarter), "all-grind", s_plain, third: second);
        beef.Hang(8, 9, 45, "G1", 756.0m);

        new DemoJob(season, Person("Greta Lowther", "0126"))
            .TakeIn(1, 8, 15, [Whole(Species.Lamb, "L-207", 121m)], "mixed", s_plain, 10).Hang(1, 10, 0, "F3", 63.5m);
    }

    private static TakenAnimal Whole(Species species, string tag, decimal pounds) =>
        new(species, ArrivalState.Whole) { Tag = tag, ArrivalWeight = Weight.FromPounds(pounds) };

    private static TakenOwner Person(string name, string lastFour) =>
        new(null, name, $"(262) 555-{lastFour}", "Stony Ridge Road, Nettlefork", null, false);
}
