using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>Working out, issuing and crediting a job's invoice.</summary>
public static class Invoicing
{
    /// <summary>What of a job can be charged now and is on no standing invoice yet: its animals, and each product that is released; three queries.</summary>
    /// <param name="today">The shop's day, for what the job's own list lacks.</param>
    /// <param name="extras">Extras of the job's list by their id, and how many of each.</param>
    public static JobCharges ChargesOf(
        this RecordsContext records, int jobId, ShopSettings shop, DateOnly today, IReadOnlyDictionary<int, int> extras) =>
        ChargesOf(records.PricesOf(jobId, today), records.GoodsOf(jobId).Animals, records.MadeOf(jobId), shop, extras);

    /// <summary>The same from what is read already.</summary>
    public static JobCharges ChargesOf(
        JobPrices prices, IReadOnlyList<JobAnimal> animals, IReadOnlyList<MadeProduct> made, ShopSettings shop, IReadOnlyDictionary<int, int> extras) => JobCharges.Of(
        prices.Own,
        prices.InForce,
        shop,
        [.. animals.Where(animal => !animal.IsInvoiced).Select(animal => animal.Charged)],
        [.. made.Where(product => product is { IsReleased: true, IsInvoiced: false }).Select(ChargedProduct.Of)],
        [.. prices.Extras.Where(price => extras.GetValueOrDefault(price.Id) > 0).Select(price => (price, extras[price.Id]))]);

    public static Outcome IssueInvoice(
        this RecordsContext records, int jobId, DateOnly today, IReadOnlyDictionary<int, int> extras, Act act)
    {
        var job = records.Jobs.AsNoTracking().Include(one => one.Owner).Single(one => one.Id == jobId);
        if (!job.AsksLocked)
            return Outcome.Refused(new Finding("", "The split is not agreed yet, so there is nothing to charge by. Agree it first."));

        var shop = records.Shop.AsNoTracking().Single();
        var charges = records.ChargesOf(jobId, shop, today, extras);
        if (charges.Lines.Count == 0)
            return Outcome.Refused(new Finding("", records.Invoices.Standing().Any(one => one.JobId == jobId)
                ? "Everything that is made so far is on an invoice already. Credit that one to issue it anew."
                : "There is nothing to charge: the price list has no prices for this job. Put them in under Office, Prices."));
        var heading = new InvoiceHeading(
            string.Join('\n', new[] { shop.Name, shop.Address, shop.Phone }.OfType<string>()),
            string.Join('\n', new[] { job.Owner.Name, job.Owner.PostalAddress, job.Owner.Phone }.OfType<string>()),
            $"{shop.TaxWording} {shop.TaxRate.Print()}");
        var lines = charges.All.Select((charge, i) => new InvoiceLine(
            i, charge.For, charge.OfId, charge.Line.Text, $"{charge.Line.Quantity} {charge.Line.Unit}".Trim(), charge.Line.Rate, charge.Line.Amount, charge.Line.Taxed, charge.Line.Tax));
        var statement = YieldAccounts.Keep(records.YieldAccountOf(jobId, shop.BenchDivision));
        var invoice = new Invoice(act.NextInvoiceNumber(), jobId, act.Now, act.Hand.Id, heading, lines, statement);
        records.Invoices.Add(invoice);
        records.SaveChanges();
        return Outcome.Done(invoice.Id);
    }

    public static Outcome CreditInvoice(this RecordsContext records, int invoiceId, Act act)
    {
        var invoice = records.Invoices.Include(one => one.Lines).SingleOrDefault(one => one.Id == invoiceId);
        if (invoice is null || invoice.IsCredit)
            return Outcome.Refused(new Finding("", "Only an invoice can be credited."));
        if (records.Invoices.Any(one => one.CreditsInvoiceId == invoiceId))
            return Outcome.Refused(new Finding("", $"Invoice {invoice.Number} was credited before."));
        var credit = invoice.Credit(act.NextInvoiceNumber(), act.Now, act.Hand.Id);
        records.Invoices.Add(credit);
        records.SaveChanges();
        return Outcome.Done(credit.Id);
    }

    /// <summary>Invoices and credits less payments; negative where the shop owes it back.</summary>
    public static Money BalanceOf(this RecordsContext records, int jobId) => Money.FromCents(
        records.Invoices.Where(invoice => invoice.JobId == jobId).Sum(invoice => invoice.Total.Cents)
        - records.Payments.Where(payment => payment.JobId == jobId).Sum(payment => payment.Amount.Cents));

    /// <param name="amount">More than zero for a payment, less for a refund.</param>
    public static Outcome TakePayment(this RecordsContext records, int jobId, Money amount, PaymentMethod method, string? note, Act act)
    {
        if (amount.IsZero)
            return Outcome.Refused(new Finding("Amount", "Type the amount that was paid."));
        records.Payments.Add(new Payment(records.Jobs.Single(job => job.Id == jobId), amount, method, isDeposit: false, note, act.Now, act.Hand.Id));
        return Outcome.Done(jobId);
    }
}
