using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;

namespace ProcessorDesk.Records;

/// <summary>One grind ask of a job: a product, and how much of it; in order of importance.</summary>
public sealed class GrindOrder
{
    private GrindOrder()
    {
    }

    /// <param name="amount">The weight for an ask by own lean or finished weight; zero otherwise.</param>
    /// <param name="percent">Of all the lean, for an ask by percent; zero otherwise.</param>
    public GrindOrder(int position, int productId, AskKind kind, Weight amount, Proportion percent)
    {
        Position = position;
        ProductId = productId;
        Kind = kind;
        Amount = amount;
        Percent = percent;
    }

    public int JobId { get; private set; }

    public int Position { get; private set; }

    public int ProductId { get; private set; }

    public Product Product { get; private set; } = null!;

    public AskKind Kind { get; private set; }

    public Weight Amount { get; private set; }

    public Proportion Percent { get; private set; }
}
