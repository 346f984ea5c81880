using FsCheck;
using FsCheck.Fluent;
using ProcessorDesk.Trade.Process;

namespace ProcessorDesk.Trade.Tests.Process;

/// <summary>A made-up record: entries at whole tens of seconds, temperatures in even hundredths, so that halves are whole.</summary>
public sealed record ProcessCase(IReadOnlyList<ProcessReading> Readings, Temperature Accuracy, TimeSpan LongestGap, int Any)
{
    /// <summary>One of something, the same each time.</summary>
    public int Pick(int count) => Any % count;

    public override string ToString() =>
        $"±{Accuracy}, gap {LongestGap}, any {Any}: " + string.Join("; ", Readings.Select(each => $"{(each.At - Cook.Start).TotalSeconds} #{each.Probe} {each.Reading}"));
}

/// <summary>Records with no entry, one, and many; with one probe to three; around the table and far from it.</summary>
public static class ProcessCases
{
    public static Arbitrary<ProcessCase> Cases() => Arb.From(
        from probes in Gen.Choose(1, 3)
        from count in Gen.Frequency((1, Gen.Constant(0)), (1, Gen.Constant(1)), (8, Gen.Choose(2, 12)))
        from readings in Gen.ListOf(Reading(probes), count)
        from accuracy in Gen.Elements(0, 0, 100, 250)
        from gap in Gen.Elements(0, 300, 900, 3600)
        from any in Gen.Choose(0, 1_000_000)
        select new ProcessCase([.. readings], Temperature.FromHundredthsFahrenheit(accuracy), TimeSpan.FromSeconds((long)gap), any));

    private static Gen<ProcessReading> Reading(int probes) =>
        from probe in Gen.Choose(1, probes)
        from tens in Gen.Frequency((6, Gen.Choose(0, 300)), (3, Gen.Choose(0, 3000)), (1, Gen.Constant(5000)))
        from half in Gen.Frequency(
            (3, Gen.Choose(13_000 / 2, 16_000 / 2)), (3, Gen.Elements(13_000 / 2, 14_500 / 2, 15_800 / 2, 16_500 / 2, 8000 / 2, 4000 / 2)),
            (2, Gen.Choose(3000 / 2, 14_000 / 2)), (1, Gen.Elements(-8000 / 2, 60_000 / 2)))
        select new ProcessReading(Cook.Start.AddSeconds(tens * 10), probe, Temperature.FromHundredthsFahrenheit(half * 2));
}
