using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records.Tests.Cast;
using ProcessorDesk.Trade;
using Xunit;

namespace ProcessorDesk.Records.Tests.Invoices;

public sealed class InvoiceTests(ShopFile shop) : IClassFixture<ShopFile>
{
    private static InvoiceLine[] Lines =>
    [
        new(1, PriceFor.Animal, null, "Cutting", "1", "$85.00", Money.FromDollars(85.00m), false, Money.Zero),
        new(2, PriceFor.Product, null, "Sticks", "10.25 lb", "$4.10 / lb", Money.FromDollars(42.03m), true, Money.FromDollars(2.63m)),
    ];

    [Fact]
    public void Totals_are_the_sums_of_the_printed_lines()
    {
        var invoice = Issue(1, 1);

        Assert.Equal(85.00m + 42.03m, invoice.Net.Dollars);
        Assert.Equal(2.63m, invoice.Tax.Dollars);
        Assert.Equal(85.00m + 42.03m + 2.63m, invoice.Total.Dollars);
    }

    [Fact]
    public void A_credit_mirrors_its_invoice_line_by_line_and_both_come_to_nothing()
    {
        var (invoiceId, creditId) = shop.Do((records, act) =>
        {
            var invoice = Issue(act.NextInvoiceNumber(), Sample.Job(records, act).Id);
            records.Invoices.Add(invoice);
            records.SaveChanges();
            var credit = invoice.Credit(act.NextInvoiceNumber(), act.Now, act.Hand.Id);
            records.Invoices.Add(credit);
            records.SaveChanges();
            return (invoice.Id, credit.Id);
        });
        using var records = shop.Open();
        var (invoice, credit) = (Kept(records, invoiceId), Kept(records, creditId));

        Assert.True(credit.IsCredit);
        Assert.False(invoice.IsCredit);
        Assert.Equal(invoiceId, credit.CreditsInvoiceId);
        Assert.Equal(invoice.Number + 1, credit.Number);
        Assert.Equal(Money.Zero, invoice.Total + credit.Total);
        Assert.Equal(
            invoice.Lines.OrderBy(line => line.Position).Select(line => (line.Text, line.Quantity, line.Rate, -line.Amount, -line.Tax)),
            credit.Lines.OrderBy(line => line.Position).Select(line => (line.Text, line.Quantity, line.Rate, line.Amount, line.Tax)));
    }

    [Fact]
    public void An_invoice_is_credited_once()
    {
        var id = shop.Do((records, act) =>
        {
            var invoice = Issue(act.NextInvoiceNumber(), Sample.Job(records, act).Id);
            records.Invoices.Add(invoice);
            records.Invoices.Add(invoice.Credit(act.NextInvoiceNumber(), act.Now, act.Hand.Id));
            records.SaveChanges();
            return invoice.Id;
        });

        Assert.Throws<DbUpdateException>(() => shop.Do((records, act) =>
            records.Invoices.Add(Kept(records, id).Credit(act.NextInvoiceNumber(), act.Now, act.Hand.Id)).Entity));
    }

    [Fact]
    public void A_credit_is_not_credited()
    {
        var credit = Issue(1, 1).Credit(2, shop.Now, 1);

        Assert.Throws<InvalidOperationException>(() => credit.Credit(3, shop.Now, 1));
    }

    [Fact]
    public void A_payment_of_nothing_is_no_payment() => shop.Do((records, act) => Assert.Throws<ArgumentException>(() =>
        new Payment(Sample.Job(records, act), Money.Zero, PaymentMethod.Cash, false, null, act.Now, act.Hand.Id)));

    private Invoice Issue(int number, int jobId) =>
        new(number, jobId, shop.Now, 1, new InvoiceHeading("Sample Meats", "Sample Owner", "Sales tax"), Lines, "{}");

    private static Invoice Kept(RecordsContext records, int id) => records.Invoices.Include(invoice => invoice.Lines).Single(invoice => invoice.Id == id);
}
