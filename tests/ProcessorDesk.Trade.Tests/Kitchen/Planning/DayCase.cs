using FsCheck;
using FsCheck.Fluent;
using ProcessorDesk.Trade.Kitchen;
using ProcessorDesk.Trade.Kitchen.Planning;

namespace ProcessorDesk.Trade.Tests.Kitchen.Planning;

/// <summary>What waits on a morning and what the kitchen can do.</summary>
public sealed record DayCase(IReadOnlyList<WaitingMeat> Waiting, DaySettings Settings, int Seed)
{
    public DayPlan Plan() => DayPlanning.Plan(Waiting, Settings);

    public long Count(Weight weight) => Settings.Division.CountOf(weight);

    public override string ToString() =>
        $"{Settings}: {string.Join("; ", Waiting.Select(one => $"{one.Id} {one.Product.Name} owner {one.Owner} {(one.IsPooled ? "pooled" : "own")} {one.Species} {Settings.Division.Print(one.Part.Green)} {one.Promise}"))}";
}

/// <summary>Nothing to a dozen and more allotments of four products and a few owners, of one division up to several loads.</summary>
public static class DayCases
{
    private static readonly KitchenProduct[] s_products =
    [
        new(1, "Ring sausage", ["milk"], IsCured: true, IsSmoked: true),
        new(2, "Snack sticks", ["milk", "soy"], IsCured: true, IsSmoked: true),
        new(3, "Fresh brats", [], IsCured: false, IsSmoked: false),
        new(4, "Burger", [], IsCured: false, IsSmoked: false),
    ];

    public static Arbitrary<DayCase> Cases() => Arb.From(
        from size in Gen.Choose(0, 14)
        from waiting in Meat().ArrayOf(size)
        from fill in Gen.Elements(0m, 0.01m, 10m, 15m, 25m)
        from smokehouse in Gen.Elements<Weight?>(null, null, Weight.Zero, Weight.FromPounds(60))
        from day in Gen.Elements<Weight?>(null, null, Weight.FromPounds(0.01m), Weight.FromPounds(90))
        from seed in Gen.Choose(0, int.MaxValue - 1)
        select new DayCase(
            [.. waiting.Select((one, i) => one with { Id = i * 7 % 15 + 1 })],
            new DaySettings(Weight.FromPounds(25), Weight.FromPounds(fill), smokehouse, day, ScaleDivision.HundredthPound, CleaningMinutes.Usual),
            seed));

    private static Gen<WaitingMeat> Meat() =>
        from product in Gen.Elements(s_products)
        from owner in Gen.Choose(1, 5)
        from pooled in Gen.Elements(true, true, false)
        from count in Gen.OneOf(Gen.Elements(1, 2499, 2500, 2501, 5000), Gen.Choose(1, 3000), Gen.Choose(1, 9000))
        from species in Gen.Frequency((4, Gen.Constant(Species.WhiteTailDeer)), (1, Gen.Constant(Species.Elk)))
        from pork in Gen.Elements(true, true, false)
        from promise in Gen.Choose(-1, 4)
        select new WaitingMeat(
            0, $"owner {owner}", product, owner, pooled, new BatchPart(Counted(count / 2), Counted(count / 4), Counted(count)), species, pork,
            promise < 0 ? null : new DateOnly(2025, 11, 20).AddDays(promise));

    private static Weight Counted(long count) => ScaleDivision.HundredthPound.FromCount(count);
}
