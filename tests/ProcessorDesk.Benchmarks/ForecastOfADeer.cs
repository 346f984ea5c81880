using BenchmarkDotNet.Attributes;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Yields;

namespace ProcessorDesk.Benchmarks;

/// <summary>What the counter says of a deer as it is hung on the scale, in figures and in words.</summary>
[MemoryDiagnoser]
public class ForecastOfADeer
{
    private readonly Weight _dressed = Weight.FromPounds(112.4m);

    [Benchmark]
    public YieldForecast? Forecast() => Forecasting.Forecast(Species.WhiteTailDeer, CarcassState.FieldDressed, CarcassState.Boneless, _dressed);

    [Benchmark]
    public string? InWords() => Forecast()?.Print();
}
