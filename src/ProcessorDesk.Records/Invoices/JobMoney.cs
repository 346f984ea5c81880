using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>What a job was billed and what was paid, each in the order it happened.</summary>
public sealed record JobMoney(IReadOnlyList<JobMoney.Bill> Bills, IReadOnlyList<JobMoney.Paid> Payments)
{
    /// <summary>Invoices and credits less payments; below zero where the shop owes it back.</summary>
    public Money Balance => Sum(Bills) - Sum(Payments);

    /// <summary>Invoices that are no credit and not credited.</summary>
    public IEnumerable<Bill> Standing => Bills.Where(bill => bill.CreditsId is null && Bills.All(other => other.CreditsId != bill.Id));

    /// <summary>
    /// The account as one invoice says it. The first one shows every payment until then. A later one begins with how the account stood
    /// on the bill before it, and shows only what was paid since: a deposit stands on one invoice.
    /// </summary>
    public OnBill AccountOn(int billId)
    {
        var bill = Bills.Single(one => one.Id == billId);
        var before = Bills.Where(one => one.Number < bill.Number).OrderBy(one => one.Number).ToList();
        var paid = Payments.Where(payment => payment.At <= bill.At).ToList();
        // What was billed and taken back altogether is as if nothing had been billed.
        if (before.Count == 0 || before.TrueForAll(one => one.CreditsId is not null || before.Exists(other => other.CreditsId == one.Id)))
            return new OnBill(null, Money.Zero, paid, bill.Total - Sum(paid));
        var last = before[^1];
        var since = paid.Where(payment => payment.At > last.At).ToList();
        var forward = Sum(before) - Sum(paid.Except(since));
        return new OnBill(last, forward, since, forward + bill.Total - Sum(since));
    }

    private static Money Sum(IEnumerable<Bill> bills) => Money.Sum(bills.Select(bill => bill.Total));

    private static Money Sum(IEnumerable<Paid> payments) => Money.Sum(payments.Select(payment => payment.Amount));

    /// <param name="CreditsId">For a credit, the invoice it takes back.</param>
    public sealed record Bill(int Id, int Number, DateTime At, int? CreditsId, Money Total);

    public sealed record Paid(int Id, DateTime At, Money Amount, PaymentMethod Method, bool IsDeposit, string? Note)
    {
        public string Words => IsDeposit ? "Deposit" : Amount.IsNegative ? "Refund" : "Payment";
    }

    /// <param name="Before">The bill the account is brought forward from; null on a job's first.</param>
    /// <param name="Forward">How the account stood with that bill.</param>
    public sealed record OnBill(Bill? Before, Money Forward, IReadOnlyList<Paid> Since, Money Balance);
}
