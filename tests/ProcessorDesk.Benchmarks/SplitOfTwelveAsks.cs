using BenchmarkDotNet.Attributes;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;

namespace ProcessorDesk.Benchmarks;

/// <summary>A season's biggest order: every kind of ask, smallest runs and steps, and a grind that does not go round.</summary>
[MemoryDiagnoser]
public class SplitOfTwelveAsks
{
    private readonly GrindAsk _plainGround = GrindAsk.OfRest("Plain ground", GrindBlend.Plain);

    private readonly GrindAsk[] _asks =
    [
        GrindAsk.OfLean("Smoked ring sausage", Pounds(25m), Blend(70m, 4m, 10m, 10m, 0m)),
        GrindAsk.OfFinished("Summer sausage", Pounds(20m), Blend(80m, 3.5m, 15m, 12.5m, 0m)),
        GrindAsk.OfFinished("Fresh hot sausage", Pounds(15m), Blend(75m, 2m, 0m, 0m, 5m)),
        GrindAsk.OfPercent("Snack sticks", Proportion.FromPercent(12.5m), Blend(85m, 3.5m, 35m, 10m, 2.5m)),
        GrindAsk.OfLean("Jerky", Pounds(12.34m), Blend(100m, 5m, 55m, 0m, 0m)),
        GrindAsk.OfPercent("Breakfast links", Proportion.FromPercent(8m), Blend(65m, 2.25m, 2m, 5m, 0m)),
        GrindAsk.OfFinished("Bologna", Pounds(10m), Blend(72m, 6.5m, 11m, 10m, 0m)),
        GrindAsk.OfLean("Patties", Pounds(10m), Blend(90m, 0m, 0m, 0m, 0.25m)),
        GrindAsk.OfFinished("Cured sticks with cheese", Pounds(4m), Blend(78m, 12m, 30m, 25m, 0m)),
        GrindAsk.OfPercent("Italian", Proportion.FromPercent(5m), Blend(70m, 2.5m, 1m, 0m, 0m)),
        GrindAsk.OfLean("Chorizo", Pounds(30m), Blend(70m, 3m, 3m, 10m, 5m)),
        GrindAsk.OfRest("Burger", Blend(90m, 0m, 0m, 0m, 1m)),
    ];

    private readonly Weight _lean = Pounds(147.83m);

    [Benchmark]
    public GrindSplit Split() => Splitting.Split(_lean, _asks, _plainGround, ScaleDivision.HundredthPound);

    private static Weight Pounds(decimal pounds) => Weight.FromPounds(pounds);

    private static GrindBlend Blend(decimal lean, decimal additions, decimal loss, decimal smallest, decimal step) => new(
        Proportion.FromPercent(lean),
        Ratio.FromDecimal(additions / 100m),
        Proportion.FromPercent(loss),
        Proportion.FromPercent(loss),
        Proportion.FromPercent(loss),
        Pounds(smallest),
        Pounds(step));
}
