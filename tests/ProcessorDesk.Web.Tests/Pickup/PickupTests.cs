using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Tests.Grind;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Pickup;

/// <summary>Amounts are worked with a pocket calculator from the printed weights; tax 6.25 % by line, halves away from zero.</summary>
public sealed class PickupTests(TrimmedShop shop) : IClassFixture<TrimmedShop>
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
    public async Task An_extra_is_counted_into_the_invoice()
    {
        var job = MadeJob.Boxed(shop);
        var caping = shop.Read(records => records.Prices.Single(price => price.Text == "Caping").Id);
        using var desk = await shop.SignIn(StaffRole.Clerk, "Pickup");

        var page = await (await desk.Open($"/Pickup/Job/{job}")).Send("Issue the invoice", ($"Issuing.Extras[{caping}]", "2"));

        page.Expect("The invoice is issued");
        Assert.Equal(Money.FromDollars(548.88m + 80m), shop.Read(records => records.Invoices.Single(invoice => invoice.JobId == job).Total));
    }

    [Fact]
    public async Task A_count_that_does_not_read_stays_typed_and_issues_nothing()
    {
        var job = MadeJob.Boxed(shop);
        var caping = shop.Read(records => records.Prices.Single(price => price.Text == "Caping").Id);
        using var desk = await shop.SignIn(StaffRole.Clerk, "Pickup");

        var page = await (await desk.Open($"/Pickup/Job/{job}")).Send("Issue the invoice", ($"Issuing.Extras[{caping}]", "two"));

        Assert.NotEmpty(page.Problems);
        Assert.Equal("two", page.Form("Issue the invoice").Value($"Issuing.Extras[{caping}]"));
        Assert.Equal(0, shop.Read(records => records.Invoices.Count(invoice => invoice.JobId == job)));
    }

    [Fact]
    public async Task A_second_press_issues_no_second_invoice()
    {
        var job = MadeJob.Boxed(shop);
        using var desk = await shop.SignIn(StaffRole.Clerk, "Pickup");
        var page = await desk.Open($"/Pickup/Job/{job}");

        await page.Press("Issue the invoice");
        await page.Press("Issue the invoice");

        Assert.Equal(1, shop.Read(records => records.Invoices.Count(invoice => invoice.JobId == job)));
    }

    [Fact]
    public async Task A_wrong_invoice_is_credited_line_by_line_and_issued_again()
    {
        var job = MadeJob.Boxed(shop);
        using var desk = await shop.SignIn(StaffRole.Clerk, "Pickup");
        var issued = await (await desk.Open($"/Pickup/Job/{job}")).Press("Issue the invoice");

        var credited = await issued.Press("Credit it");
        credited.Expect("The invoice is credited", "-$548.88");
        var again = await credited.Press("Issue the invoice");

        again.Expect("The invoice is issued");
        var totals = shop.Read(records => records.Invoices.Where(invoice => invoice.JobId == job).OrderBy(invoice => invoice.Number).Select(invoice => invoice.Total).ToList());
        Assert.Equal([548.88m, -548.88m, 548.88m], totals.Select(total => total.Dollars));
    }

    [Fact]
    public async Task What_is_owed_is_paid_and_then_it_goes_out()
    {
        var job = MadeJob.Boxed(shop);
        using var desk = await shop.SignIn(StaffRole.Clerk, "Pickup");
        var issued = await (await desk.Open($"/Pickup/Job/{job}")).Press("Issue the invoice");

        var refused = await issued.Send("Hand over", ("HandingOver.To", "Ines Moreau"));
        refused.Expect("$498.88 is still owed");
        Assert.Equal("Ines Moreau", refused.Form("Hand over").Value("HandingOver.To"));
        var paid = await refused.Send("Book it", ("Paying.Amount", "498.88"), ("Paying.Method", "Check"));
        paid.Expect("Payment of $498.88 is booked.", "$0.00");
        var gone = await paid.Send("Hand over", ("HandingOver.To", "Ines Moreau"));

        gone.Expect("Handed over to Ines Moreau");
        Assert.NotNull(shop.Read(records => records.Jobs.Single(one => one.Id == job).HandedOverAt));
    }

    [Fact]
    public async Task Meat_on_hold_does_not_leave()
    {
        var job = MadeJob.Boxed(shop);
        using var desk = await shop.SignIn(StaffRole.Clerk, "Pickup");
        var issued = await (await desk.Open($"/Pickup/Job/{job}")).Press("Issue the invoice");
        shop.Write((records, act) =>
        {
            TrimmedJob.AnimalOf(records, job).PutOnHold(HoldReason.DiseaseDetected, null, act.Now, shop.StaffOf(StaffRole.Manager));
            return Outcome.Done();
        });

        var page = await issued.Send("Hand over", ("HandingOver.To", "Ines Moreau"));

        page.Expect("is on hold: disease detected");
        Assert.Null(shop.Read(records => records.Jobs.Single(one => one.Id == job).HandedOverAt));
    }

    [Fact]
    public async Task A_part_goes_back_to_whoever_signs_for_it()
    {
        var job = MadeJob.Boxed(shop);
        using var desk = await shop.SignIn(StaffRole.Clerk, "Pickup");
        var page = await desk.Open($"/Pickup/Job/{job}");

        (await page.Press("Give it back")).Expect("Write who takes the part.");
        var given = await page.Send("Give it back", ("Giving.PartTo", "The taxidermist"));

        given.Expect("Given to The taxidermist");
        Assert.Equal("The taxidermist", shop.Read(records => records.Parts.First(part => part.Animal.Shares.Any(share => share.JobId == job) && part.GivenAt != null).GivenTo));
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
    public async Task The_papers_are_pdfs_shown_in_the_browser()
    {
        var job = MadeJob.Boxed(shop);
        using var desk = await shop.SignIn(StaffRole.Clerk, "Pickup");
        await (await desk.Open($"/Pickup/Job/{job}")).Press("Issue the invoice");
        var invoice = shop.Read(records => records.Invoices.Single(one => one.JobId == job).Id);

        foreach (var path in new[] { $"/Pickup/Invoice/{invoice}", $"/Pickup/Summary/{job}" })
        {
            using var answer = await desk.Client.GetAsync(new Uri(path, UriKind.Relative));
            Assert.Equal("application/pdf", answer.Content.Headers.ContentType?.MediaType);
            Assert.Equal("%PDF"u8.ToArray(), (await answer.Content.ReadAsByteArrayAsync())[..4]);
        }
    }
}
