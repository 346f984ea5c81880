using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>Money against a job: a deposit, a payment, or a refund (negative). Never changed or deleted.</summary>
public sealed class Payment
{
    private Payment()
    {
    }

    public Payment(Job job, Money amount, PaymentMethod method, bool isDeposit, string? note, DateTime at, int byId)
    {
        if (amount.IsZero)
            throw new ArgumentException("A payment is not zero.", nameof(amount));
        Job = job;
        Amount = amount;
        Method = method;
        IsDeposit = isDeposit;
        Note = Texts.OrNull(note);
        At = at;
        ById = byId;
    }

    public int Id { get; private set; }

    public int JobId { get; private set; }

    public Job Job { get; private set; } = null!;

    public Money Amount { get; private set; }

    public PaymentMethod Method { get; private set; }

    public bool IsDeposit { get; private set; }

    public string? Note { get; private set; }

    public DateTime At { get; private set; }

    public int ById { get; private set; }
}
