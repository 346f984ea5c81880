using ProcessorDesk.Trade;
using Xunit;

namespace ProcessorDesk.Records.Tests.SeedDemo;

/// <summary>Traces of the demo's batches.</summary>
[Collection(DemoShelf.Name)]
public sealed class DemoTraceTests(DemoFile demo)
{
    private static readonly ScaleDivision s_bench = ScaleDivision.HundredthPound;

    [Fact]
    public void A_trace_and_the_batchs_own_balance_say_the_same_of_every_mixed_batch()
    {
        using var records = demo.Open();
        var batches = records.Batches.Where(batch => batch.MixedAt != null && batch.EndedAt == null).Select(batch => batch.Id).ToList();
        var (left, lost) = (0, 0);

        foreach (var id in batches)
        {
            var trace = records.TraceOf(new TraceStart(TracedKind.Batch, id))!;
            var batch = Assert.Single(trace.In);
            var balance = BatchBalance.Of(records.ReadBatch(id)!, records.LinesOf(id), s_bench);

            Assert.Equal(
                Printed(balance.Mixed, balance.LeftInMachines ?? Weight.Zero, balance.Finished, balance.Loss),
                Printed(trace.Mixed(batch, s_bench), batch.Left, batch.IsWeighed ? batch.Finished : null, trace.Lost(batch, s_bench)));
            left += batch.Left.IsPositive ? 1 : 0;
            lost += trace.Lost(batch, s_bench) is null ? 0 : 1;
        }

        Assert.True(left > 0 && lost > 0 && lost < batches.Count);
    }

    private static IReadOnlyList<string> Printed(params Weight?[] weights) => [.. weights.Select(weight => weight is { } known ? s_bench.Print(known) : "–")];
}
