using ProcessorDesk.Records;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Web.Pages.Counter;

/// <summary>An order that was read: what is to become of the meat.</summary>
public sealed record OrderFacts(IReadOnlyList<CutOrderLine> Cuts, IReadOnlyList<OfferedAsk> Asks, DateOnly? PromisedFor, OrderInput Typed)
{
    /// <summary>Writes the order on the job as far as it is not locked.</summary>
    public IReadOnlyList<Finding> WriteOn(Job job)
    {
        job.Arrange(PromisedFor, Typed.Pooling, Typed.Wrap, Typed.NoPork, Typed.Notes);
        Finding?[] findings =
        [
            job.CutsLocked ? null : job.OrderCuts(Cuts),
            job.AsksLocked ? null : job.OrderGrind([.. Asks.Select((ask, i) => new GrindOrder(i, ask.Formula.ProductId, ask.Kind, ask.Amount, ask.Percent))]),
        ];
        return [.. findings.OfType<Finding>()];
    }
}
