using BenchmarkDotNet.Attributes;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Blending;

namespace ProcessorDesk.Benchmarks;

/// <summary>The cheapest block of a full cooler, and the same block where the bounds leave none.</summary>
[MemoryDiagnoser]
public class BlendOfTwelveMeats
{
    private static readonly BlendMaterial[] s_meats =
    [
        Meat("Deer trim", 2.42m, 0, 10m, 60m, 80m),
        Meat("Elk trim", 1.45m, 0, 0m, 30m, 25m),
        Meat("Beef 90", 10m, 489, 0m, 100m, 60m),
        Meat("Beef 80", 20m, 379, 5m, 100m, 40m),
        Meat("Beef 70", 30m, 319, 0m, 40m, 90m),
        Meat("Pork 72", 28m, 219, 0m, 50m, 120m),
        Meat("Pork 50", 50m, 159, 0m, 35m, 100m),
        Meat("Pork 42", 58m, 129, 0m, 25m, 100m),
        Meat("Belly", 53.01m, 349, 0m, 20m, 30m),
        Meat("Backfat", 88.69m, 119, 0m, 15m, 22.5m),
        Meat("Suet", 94m, 99, 0m, 10m, 18m),
        Meat("Bison trim", 1.84m, 899, 2.5m, 100m, 12m),
    ];

    private readonly BlendWanted _toTwentyPercent = Block(FatBand.Exactly(Proportion.FromPercent(20m)));

    private readonly BlendWanted _toOnePercent = Block(FatBand.AtMost(Proportion.FromPercent(1m)));

    [Benchmark]
    public LeastCostAnswer Cheapest() => LeastCost.Find(_toTwentyPercent);

    [Benchmark]
    public LeastCostAnswer BoundsThatClash() => LeastCost.Find(_toOnePercent);

    private static BlendWanted Block(FatBand fat) => new(Weight.FromPounds(150m), ScaleDivision.HundredthPound, fat, s_meats);

    private static BlendMaterial Meat(string name, decimal fat, int cents, decimal least, decimal most, decimal pounds) => new(
        name,
        Proportion.FromPercent(fat),
        PricePerPound.FromCents(cents),
        Proportion.FromPercent(least),
        Proportion.FromPercent(most),
        Weight.FromPounds(pounds));
}
