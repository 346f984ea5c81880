using FsCheck.Xunit;
using ProcessorDesk.Trade.Pricing;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Pricing;

[Properties(MaxTest = 1000, Arbitrary = [typeof(Sizes)])]
public sealed class InvoiceTotalTests
{
    [Fact]
    public void An_invoice_by_pocket_calculator()
    {
        var tax = Proportion.FromPercent(6.5m);
        ChargeLine[] lines =
        [
            Charges.Flat("Deer, field-dressed: skin, bone, wrap", Money.FromDollars(110m), null),
            Charges.PerPound("Smoked ring sausage", Weight.FromPounds(37.14m), ScaleDivision.HundredthPound, PricePerPound.FromCents(325), tax),
            Charges.PerPound("Added pork trim", Weight.FromPounds(10.71m), ScaleDivision.HundredthPound, PricePerPound.FromCents(249), tax),
            Charges.PerPiece("Rush", 1, Money.FromDollars(25m), null, "order"),
        ];

        var total = InvoiceTotal.Of(lines, [Money.FromDollars(50m), Money.FromDollars(20m)]);

        const decimal Ring = 120.71m; // 37.14 × 3.25 = 120.705
        const decimal Pork = 26.67m; // 10.71 × 2.49 = 26.6679
        const decimal RingTax = 7.85m; // 7.84615
        const decimal PorkTax = 1.73m; // 1.73355
        Assert.Equal(110m + Ring + Pork + 25m, total.Subtotal.Dollars);
        Assert.Equal(Ring + Pork, total.TaxedSubtotal.Dollars);
        Assert.Equal(RingTax + PorkTax, total.Tax.Dollars);
        Assert.Equal(291.96m, total.Total.Dollars);
        Assert.Equal(70m, total.Paid.Dollars);
        Assert.Equal(221.96m, total.Balance.Dollars);
    }

    [Fact]
    public void An_invoice_without_lines_is_nothing_and_a_deposit_over_it_is_owed_back()
    {
        Assert.Equal(new InvoiceTotal(Money.Zero, Money.Zero, Money.Zero, Money.Zero, Money.Zero, Money.Zero), InvoiceTotal.Of([], []));
        Assert.Equal(-5m, InvoiceTotal.Of([Charges.Flat("Skinning", Money.FromDollars(20m), null)], [Money.FromDollars(25m)]).Balance.Dollars);
    }

    [Property]
    public void Printed_lines_taxes_and_payments_add_up_to_the_cent((Money Amount, Proportion Tax)[] charges, Money[] payments)
    {
        var lines = charges.Select((charge, i) => Charges.Flat($"Line {i}", charge.Amount, i % 3 == 0 ? null : charge.Tax)).ToList();

        var total = InvoiceTotal.Of(lines, payments);

        Assert.Equal(lines.Sum(line => Printed(line.Amount)) + lines.Sum(line => Printed(line.Tax)), Printed(total.Total));
        Assert.Equal(Printed(total.Subtotal) + Printed(total.Tax), Printed(total.Total));
        Assert.Equal(Printed(total.Total), Printed(total.Paid) + Printed(total.Balance));
        Assert.Equal(payments.Sum(Printed), Printed(total.Paid));
        Assert.All(lines.Where(line => !line.Taxed), line => Assert.True(line.Tax.IsZero));
    }

    /// <summary>The figure a reader of the page has.</summary>
    private static decimal Printed(Money money) =>
        decimal.Parse(money.Print().Replace("$", "", StringComparison.Ordinal), System.Globalization.CultureInfo.InvariantCulture);
}
