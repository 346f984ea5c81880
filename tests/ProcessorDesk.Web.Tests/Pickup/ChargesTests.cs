using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Tests.Grind;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Pickup;

/// <summary>Amounts are worked with a pocket calculator from the printed weights; tax 6.25 % by line, halves away from zero.</summary>
public sealed class ChargesTests(TrimmedShop shop) : IClassFixture<TrimmedShop>
{
    [Fact]
    public async Task The_charges_are_the_printed_weights_times_the_rates()
    {
        var job = MadeJob.Boxed(shop);
        using var desk = await shop.SignIn(StaffRole.Clerk, "Pickup");

        var page = await desk.Open($"/Pickup/Job/{job}");

        page.Expect("$139.28");  // 37.14 lb green × 3.75 = 139.275
        page.Expect("$84.41");   // 19.86 lb finished × 4.25 = 84.405
        page.Expect("$37.25");   // 14.90 lb finished × 2.50
        page.Expect("$42.38");   // 38.53 lb lean × 1.10 = 42.383
        page.Expect("$36.93");   // (10.71 + 4.55 + 3.68) lb fat × 1.95 = 36.933
        page.Expect("$530.25");  // 2 × 95.00 and the five above
        page.Expect("$18.63");   // 8.71 + 5.28 + 2.33 + 2.31 (8.705, 5.275625, 2.328125, 2.308125)
        page.Expect("$548.88");
        page.Expect("$498.88");  // less the deposit of 50.00
    }

    [Fact]
    public async Task Only_what_is_made_is_charged_and_the_next_invoice_charges_the_rest()
    {
        var job = MadeJob.Agree(shop);
        MadeJob.Make(shop, job, "Hot sausage");
        using var desk = await shop.SignIn(StaffRole.Clerk, "Pickup");

        var first = await (await desk.Open($"/Pickup/Job/{job}")).Press("Issue the invoice");
        // 190.00 + 37.25 + 7.18 (3.68 × 1.95 = 7.176) = 234.43; tax 2.33 + 0.45 (0.44875) = 2.78.
        Assert.Equal(237.21m, TotalsOf(job).Single());
        first.Expect("Everything made so far is invoiced", "Owed$187.21"); // less the deposit of 50.00
        shop.Clock.Advance(TimeSpan.FromDays(14));
        MadeJob.Make(shop, job, "Summer sausage");
        var second = await (await desk.Open($"/Pickup/Job/{job}")).Press("Issue the invoice");

        // 84.41 + 8.87 (4.55 × 1.95 = 8.8725) = 93.28; tax 5.28 + 0.55 (0.554375) = 5.83.
        Assert.Equal([237.21m, 99.11m], TotalsOf(job));
        second.Expect("Invoice", "$99.11", "Deposit, cash");
        Assert.Equal(237.21m + 99.11m - 50.00m, shop.Read(records => records.BalanceOf(job)).Dollars);
    }

    [Fact]
    public async Task An_extra_is_counted_into_the_invoice()
    {
        var job = MadeJob.Boxed(shop);
        using var desk = await shop.SignIn(StaffRole.Clerk, "Pickup");

        var page = await (await desk.Open($"/Pickup/Job/{job}")).Send("Issue the invoice", ($"Issuing.Extras[{Caping}]", "2"));

        page.Expect("The invoice is issued");
        Assert.Equal(548.88m + 80m, TotalsOf(job).Single());
    }

    [Fact]
    public async Task An_extra_may_be_invoiced_alone_when_all_else_is()
    {
        var job = MadeJob.Boxed(shop);
        using var desk = await shop.SignIn(StaffRole.Clerk, "Pickup");
        var issued = await (await desk.Open($"/Pickup/Job/{job}")).Press("Issue the invoice");

        (await issued.Press("Issue the invoice")).Expect("Everything that is made so far is on an invoice already");
        await issued.Send("Issue the invoice", ($"Issuing.Extras[{Caping}]", "1"));

        Assert.Equal([548.88m, 40.00m], TotalsOf(job));
    }

    [Fact]
    public async Task A_count_that_does_not_read_stays_typed_and_issues_nothing()
    {
        var job = MadeJob.Boxed(shop);
        using var desk = await shop.SignIn(StaffRole.Clerk, "Pickup");

        var page = await (await desk.Open($"/Pickup/Job/{job}")).Send("Issue the invoice", ($"Issuing.Extras[{Caping}]", "two"));

        Assert.NotEmpty(page.Problems);
        Assert.Equal("two", page.Form("Issue the invoice").Value($"Issuing.Extras[{Caping}]"));
        Assert.Empty(TotalsOf(job));
    }

    [Fact]
    public async Task A_second_press_issues_no_second_invoice()
    {
        var job = MadeJob.Boxed(shop);
        using var desk = await shop.SignIn(StaffRole.Clerk, "Pickup");
        var page = await desk.Open($"/Pickup/Job/{job}");

        await page.Press("Issue the invoice");
        await page.Press("Issue the invoice");

        Assert.Single(TotalsOf(job));
    }

    [Fact]
    public async Task A_wrong_invoice_is_credited_line_by_line_and_issued_again()
    {
        var job = MadeJob.Boxed(shop);
        using var desk = await shop.SignIn(StaffRole.Clerk, "Pickup");
        var issued = await (await desk.Open($"/Pickup/Job/{job}")).Press("Issue the invoice");

        var credited = await issued.Press("Credit it");
        credited.Expect("The invoice is credited", "-$548.88", "of invoice", "Paid ahead$50.00");
        var again = await credited.Press("Issue the invoice");

        again.Expect("The invoice is issued");
        Assert.Equal([548.88m, -548.88m, 548.88m], TotalsOf(job));
    }

    [Theory]
    [InlineData("abc")]
    [InlineData("")]
    [InlineData("0")]
    public async Task A_payment_that_is_none_is_refused_beside_its_field(string typed)
    {
        var job = MadeJob.Boxed(shop);
        using var desk = await shop.SignIn(StaffRole.Clerk, "Pickup");

        var page = await (await desk.Open($"/Pickup/Job/{job}")).Send("Book it", ("Paying.Amount", typed));

        Assert.NotEmpty(page.Problems);
        Assert.Equal(1, shop.Read(records => records.Payments.Count(payment => payment.JobId == job))); // the deposit alone
    }

    [Fact]
    public async Task Money_given_back_is_owed_again()
    {
        var job = MadeJob.Boxed(shop);
        using var desk = await shop.SignIn(StaffRole.Clerk, "Pickup");

        var page = await (await desk.Open($"/Pickup/Job/{job}")).Send("Book it", ("Paying.Amount", "50"), ("Paying.IsRefund", "true"));

        page.Expect("Refund of $50.00 is booked.", "Refund, cash", "-$50.00", "Balance$0.00");
    }

    private int Caping => shop.Read(records => records.Prices.Single(price => price.Text == "Caping").Id);

    private List<decimal> TotalsOf(int job) =>
        shop.Read(records => records.Invoices.Where(invoice => invoice.JobId == job).OrderBy(invoice => invoice.Number).Select(invoice => invoice.Total).AsEnumerable().Select(total => total.Dollars).ToList());
}
