using BenchmarkDotNet.Attributes;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Curing;

namespace ProcessorDesk.Benchmarks;

/// <summary>The check that stands between a weighed cure and the mixer, with its working and its findings.</summary>
[MemoryDiagnoser]
public class CureOfAMix
{
    private readonly Weight _block = Weight.FromPounds(25m);

    private readonly CureAmount[] _within = [Cure(1m)];

    private readonly CureAmount[] _over = [Cure(1.25m)];

    [Benchmark]
    public CureCheck ThatMeets() => ComminutedCure.Check(_block, _within);

    [Benchmark]
    public CureCheck ThatIsRefused() => ComminutedCure.Check(_block, _over);

    private static CureAmount Cure(decimal ounces) =>
        new("Pink cure", Weight.FromOunces(ounces), Proportion.FromPercent(6.25m), Proportion.Zero, WeightUnit.Ounce);
}
