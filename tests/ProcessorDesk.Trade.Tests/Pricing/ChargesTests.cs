using FsCheck.Xunit;
using ProcessorDesk.Trade.Pricing;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Pricing;

[Properties(MaxTest = 1000, Arbitrary = [typeof(Sizes)])]
public sealed class ChargesTests
{
    private static readonly Proportion s_tax = Proportion.FromPercent(6.5m);

    [Theory]
    [InlineData("0", 125, 0)]
    [InlineData("0.01", 125, 1)] // 1.25 cents
    [InlineData("0.02", 125, 3)] // 2.5 cents: half away from zero
    [InlineData("0.02", 75, 2)] // 1.5 cents
    [InlineData("92.75", 125, 11594)] // 11,593.75 cents
    [InlineData("12.404", 125, 1550)] // printed 12.40
    [InlineData("12.405", 125, 1551)] // printed 12.41: 1,551.25 cents
    [InlineData("100000", 2147, 214_700_000)]
    public void A_weight_is_charged_as_it_is_printed(string pounds, int rate, long cents)
    {
        var weight = Weight.FromPounds(decimal.Parse(pounds, System.Globalization.CultureInfo.InvariantCulture));

        Assert.Equal(cents, Charges.PerPound("Cut and wrap", weight, ScaleDivision.HundredthPound, PricePerPound.FromCents(rate), null).Amount.Cents);
    }

    [Fact]
    public void A_line_holds_all_that_is_printed()
    {
        Assert.Equal(
            new ChargeLine("Smoked ring sausage", "37.14", "lb", "$3.25 / lb", Money.FromCents(12071), true, Money.FromCents(785)), // 120.705, 7.84615
            Charges.PerPound("Smoked ring sausage", Weight.FromPounds(37.14m), ScaleDivision.HundredthPound, PricePerPound.FromCents(325), s_tax));
        Assert.Equal(
            new ChargeLine("Skull cleaned", "2", "piece", "$45.00 / piece", Money.FromCents(9000), false, Money.Zero),
            Charges.PerPiece("Skull cleaned", 2, Money.FromDollars(45m), null));
        Assert.Equal(
            new ChargeLine("Storage", "3", "day", "$1.50 / day", Money.FromCents(450), true, Money.FromCents(29)), // 29.25
            Charges.PerPiece("Storage", 3, Money.FromDollars(1.5m), s_tax, "day"));
        Assert.Equal(
            new ChargeLine("Skinning", "", "", "", Money.FromCents(2000), true, Money.FromCents(130)),
            Charges.Flat("Skinning", Money.FromDollars(20m), s_tax));
        Assert.Equal(
            new ChargeLine("Slaughter", "1/4", "of", "$90.10", Money.FromCents(2253), false, Money.Zero), // 22.525
            Charges.Part("Slaughter", new OwnersShare(OwnersShares.Of([Ratio.Of(1, 4), Ratio.Of(3, 4)]), 0), Money.FromDollars(90.10m), null));
    }

    [Fact]
    public void A_line_under_its_minimum_charges_the_minimum_and_says_so()
    {
        var small = Charges.PerPound("Cut and wrap", Weight.FromPounds(40m), ScaleDivision.HundredthPound, PricePerPound.FromCents(110), s_tax, Money.FromDollars(90m));
        var even = Charges.PerPound("Cut and wrap", Weight.FromPounds(40m), ScaleDivision.HundredthPound, PricePerPound.FromCents(225), s_tax, Money.FromDollars(90m));

        Assert.Equal(("$1.10 / lb, at least $90.00", 9000L, 585L), (small.Rate, small.Amount.Cents, small.Tax.Cents));
        Assert.Equal(("$2.25 / lb", 9000L), (even.Rate, even.Amount.Cents));
    }

    [Fact]
    public void Lines_under_a_minimum_are_topped_up_by_a_line_of_its_own()
    {
        ChargeLine[] lines = [Charges.Flat("Skinning", Money.FromDollars(20m), null), Charges.Flat("Boning", Money.FromDollars(34.50m), null)];

        Assert.Equal(Money.FromDollars(20.50m), Charges.UpToMinimum("To the minimum charge", lines, Money.FromDollars(75m), null)!.Amount);
        Assert.Null(Charges.UpToMinimum("To the minimum charge", lines, Money.FromDollars(54.50m), null));
        Assert.Null(Charges.UpToMinimum("To the minimum charge", lines, Money.FromDollars(10m), null));
    }

    [Fact]
    public void A_credit_takes_its_tax_back()
    {
        var line = Charges.Flat("Credit: torn pack", Money.FromCents(-1010), s_tax);

        Assert.Equal((-1010L, -66L), (line.Amount.Cents, line.Tax.Cents)); // 65.65 cents
    }

    [Fact]
    public void Nothing_is_charged_below_zero()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Charges.PerPiece("Hide", -1, Money.FromCents(100), null));
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            Charges.PerPound("Cut", Weight.FromPounds(-1m), ScaleDivision.HundredthPound, PricePerPound.FromCents(100), null));
    }

    [Property]
    public void A_pocket_calculator_gets_the_same_amount_and_tax(Keyed keyed, PricePerPound rate, Proportion tax)
    {
        var line = Charges.PerPound("Cut and wrap", keyed.Weight, keyed.Division, rate, tax);

        var pounds = keyed.Division.Unit switch
        {
            WeightUnit.Pound => keyed.Figure,
            WeightUnit.Ounce => keyed.Figure / 16m,
            WeightUnit.Kilogram => keyed.Figure / 0.45359237m,
            WeightUnit.Gram => keyed.Figure / 453.59237m,
        };
        var amount = decimal.Round(pounds * rate.CentsPerPound, 0, MidpointRounding.AwayFromZero);
        Assert.Equal(amount, line.Amount.Cents);
        Assert.Equal(decimal.Round(amount * tax.PartsPerMillion / 1_000_000m, 0, MidpointRounding.AwayFromZero), line.Tax.Cents);
        Assert.Equal(keyed.Division.PrintFigure(keyed.Weight), line.Quantity);
    }
}
