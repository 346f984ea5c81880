using BenchmarkDotNet.Attributes;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Kitchen;
using ProcessorDesk.Trade.Kitchen.Planning;

namespace ProcessorDesk.Benchmarks;

/// <summary>Sixty allotments of nine products, some asked for more than others, two thirds of them pooled, over a mixer of 25 lb; and a batch of as many contributions as are gone through.</summary>
[MemoryDiagnoser]
public class PlanOfADay
{
    private static readonly KitchenProduct[] s_products =
    [
        new(1, "Smoked ring sausage", ["milk"], IsCured: true, IsSmoked: true),
        new(2, "Summer sausage", ["mustard"], IsCured: true, IsSmoked: true),
        new(3, "Snack sticks", ["soybeans"], IsCured: true, IsSmoked: true),
        new(4, "Cheddar sticks", ["milk", "soybeans"], IsCured: true, IsSmoked: true),
        new(5, "Bologna", ["milk", "wheat"], IsCured: true, IsSmoked: true),
        new(6, "Fresh brats", [], IsCured: false, IsSmoked: false),
        new(7, "Breakfast sausage", [], IsCured: false, IsSmoked: false),
        new(8, "Burger", [], IsCured: false, IsSmoked: false),
        new(9, "Ground jerky", ["soybeans", "wheat"], IsCured: true, IsSmoked: true),
    ];

    private readonly DaySettings _shop = new(
        Weight.FromPounds(25), Weight.FromPounds(10), null, null, ScaleDivision.HundredthPound, CleaningMinutes.Usual);

    private readonly WaitingMeat[] _sixty = [.. Enumerable.Range(0, 60).Select(i => Meat(i, new Random(i)))];

    private readonly BatchPart[] _sixteen = [.. Enumerable.Range(0, 16).Select(i => Part(new Random(i), 1_000, 2_200))];

    [Benchmark]
    public DayPlan Day() => DayPlanning.Plan(_sixty, _shop);

    [Benchmark]
    public LoadDivision SixteenOfTenToTwentyTwoPounds() => PooledLoads.Divide(_sixteen, _shop.MixerCapacity, _shop.SmallestFill, _shop.Division);

    private static WaitingMeat Meat(int i, Random random) => new(
        i + 1, $"owner {i / 2}", s_products[i < 9 ? i : Math.Min(random.Next(9), random.Next(9))], i / 2, random.Next(3) != 0, Part(random, 300, 3_500), i % 7 == 0 ? Species.Elk : Species.WhiteTailDeer, i % 11 != 0,
        new DateOnly(2025, 11, 20).AddDays(random.Next(10)));

    private static BatchPart Part(Random random, int least, int most) =>
        new(Weight.Zero, Weight.Zero, ScaleDivision.HundredthPound.FromCount(random.Next(least, most)));
}
