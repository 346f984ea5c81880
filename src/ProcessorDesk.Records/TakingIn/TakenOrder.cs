using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>What is to become of the meat.</summary>
public sealed record TakenOrder(
    IReadOnlyList<CutOrderLine> Cuts,
    IReadOnlyList<PlannedAsk> Asks,
    DateOnly? PromisedFor,
    Pooling Pooling,
    PackWrap Wrap,
    bool NoPork,
    string? Notes)
{
    /// <summary>Writes the order on the job as far as it is not locked.</summary>
    public IReadOnlyList<Finding> WriteOn(Job job)
    {
        job.Arrange(PromisedFor, Pooling, Wrap, NoPork, Notes);
        Finding?[] findings =
        [
            job.CutsLocked ? null : job.OrderCuts(Cuts),
            job.AsksLocked ? null : job.OrderGrind([.. Asks.Select((ask, i) => new GrindOrder(i, ask.Formula.ProductId, ask.Kind, ask.Amount, ask.Percent))]),
        ];
        return [.. findings.OfType<Finding>()];
    }
}
