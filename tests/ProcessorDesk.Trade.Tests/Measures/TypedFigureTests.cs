using FsCheck.Xunit;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Measures;

[Properties(MaxTest = 1000, Arbitrary = [typeof(Sizes)])]
public sealed class TypedFigureTests
{
    [Theory]
    [InlineData("0", 0)]
    [InlineData("0.01", 1)]
    [InlineData("12", 1200)]
    [InlineData("12.5", 1250)]
    [InlineData("$12.50", 1250)]
    [InlineData("$ 1,234.50", 123450)]
    [InlineData(" .5 ", 50)]
    [InlineData("1000000", 100_000_000)]
    public void Money_is_read(string typed, long cents) => Assert.Equal(cents, MoneyText.Parse(typed).Result.Cents);

    [Theory]
    [InlineData(null, "Type the amount, for example 12.50.")]
    [InlineData("-5", "Type the amount without the minus.")]
    [InlineData("$-5", "Type the amount without the minus.")]
    [InlineData("-$5", "Type the amount without the minus.")]
    [InlineData("12.505", "Type the amount in whole cents, for example 12.50.")]
    [InlineData("12,50", "\"12,50\" does not read as money. Type the amount like 12.50.")]
    [InlineData("$", "\"$\" does not read as money. Type the amount like 12.50.")]
    [InlineData("1000000.01", "That is more than $1,000,000.00. Type the amount again.")]
    public void Money_that_cannot_be_meant_is_answered(string? typed, string words) => Assert.Equal(words, MoneyText.Parse(typed).Problem);

    [Theory]
    [InlineData("1.25", 125)]
    [InlineData("$1.25 / lb", 125)]
    [InlineData("1.25/lb", 125)]
    [InlineData("1.25 a pound", 125)]
    [InlineData("1.25 per lb.", 125)]
    [InlineData("0", 0)]
    public void A_price_per_pound_is_read(string typed, int cents) => Assert.Equal(cents, MoneyText.ParsePerPound(typed).Result.CentsPerPound);

    [Theory]
    [InlineData("", "Type the price per pound, for example 1.25.")]
    [InlineData("/ lb", "Type the price per pound, for example 1.25.")]
    [InlineData("1.255", "Type the price per pound in whole cents, for example 1.25.")]
    [InlineData("dear", "\"dear\" does not read as money. Type the price per pound like 1.25.")]
    public void A_price_that_cannot_be_meant_is_answered(string typed, string words) =>
        Assert.Equal(words, MoneyText.ParsePerPound(typed).Problem);

    [Theory]
    [InlineData("70", 700_000)]
    [InlineData("70 %", 700_000)]
    [InlineData("6.25%", 62_500)]
    [InlineData("12 1/2 %", 125_000)]
    [InlineData("0", 0)]
    [InlineData("0.0001", 1)]
    [InlineData("100", 1_000_000)]
    public void A_percent_is_read(string typed, int partsPerMillion) =>
        Assert.Equal(partsPerMillion, ProportionText.Parse(typed).Result.PartsPerMillion);

    [Theory]
    [InlineData("", "Type a percent, for example 70 or 6.25.")]
    [InlineData("-1", "A percent is never below zero here. Type it without the minus.")]
    [InlineData("%", "\"%\" does not read as a percent. Type it like 70 or 6.25.")]
    [InlineData("half", "\"half\" does not read as a percent. Type it like 70 or 6.25.")]
    [InlineData("100.0001", "That is more than 100 %. Type the percent again.")]
    [InlineData("6.25001", "Type the percent with no more than four decimals, for example 6.25.")]
    [InlineData("1/3", "Type the percent with no more than four decimals, for example 6.25.")]
    public void A_percent_that_cannot_be_meant_is_answered(string typed, string words) => Assert.Equal(words, ProportionText.Parse(typed).Problem);

    [Fact]
    public void A_mark_up_may_be_over_the_whole() =>
        Assert.Equal(150m, ProportionText.Parse("150", Proportion.FromPercent(300m)).Result.Percent);

    [Theory]
    [InlineData("38", 3800, 3800)]
    [InlineData("38 F", 3800, 3800)]
    [InlineData("38.5 °F", 3850, 3850)]
    [InlineData("38.005", 3800, 3801)]
    [InlineData("-4", -400, -400)]
    [InlineData("-4.005", -401, -400)]
    [InlineData("3.5 C", 3830, 3830)]
    [InlineData("0 C", 3200, 3200)]
    [InlineData("3.33 °C", 3799, 3800)]
    [InlineData("-18c", -40, -40)]
    [InlineData("-80", -8000, -8000)]
    [InlineData("600", 60000, 60000)]
    public void A_temperature_is_rounded_against_the_verdict(string typed, int showingHeat, int showingCold)
    {
        Assert.Equal(showingHeat, TemperatureText.ParseShowingHeat(typed).Result.HundredthsFahrenheit);
        Assert.Equal(showingCold, TemperatureText.ParseShowingCold(typed).Result.HundredthsFahrenheit);
    }

    [Theory]
    [InlineData("", "Type a temperature, for example 38 or 3.5 C.")]
    [InlineData("cold", "\"cold\" does not read as a temperature. Type it like 38 or 3.5 C.")]
    [InlineData("3,5 C", "\"3,5 C\" does not read as a temperature. Type it like 38 or 3.5 C.")]
    [InlineData("38 K", "\"38 K\" does not read as a temperature. Type it like 38 or 3.5 C.")]
    [InlineData("-80.01", "Type a temperature between -80 and 600 °F, or the same in °C with a C behind it.")]
    [InlineData("3800", "Type a temperature between -80 and 600 °F, or the same in °C with a C behind it.")]
    public void A_temperature_that_cannot_be_meant_is_answered(string typed, string words)
    {
        Assert.Equal(words, TemperatureText.ParseShowingHeat(typed).Problem);
        Assert.Equal(words, TemperatureText.ParseShowingCold(typed).Problem);
    }

    [Theory]
    [InlineData("0", 0)]
    [InlineData("12", 12)]
    [InlineData("1,200", 1200)]
    [InlineData("1000000", 1_000_000)]
    public void A_count_is_read(string typed, int count) => Assert.Equal(count, CountText.Parse(typed).Result);

    [Theory]
    [InlineData("", "Type a whole number, for example 12.")]
    [InlineData("-1", "Type zero or more, without the minus.")]
    [InlineData("1.5", "Type a whole number, without a part of one.")]
    [InlineData("4/2", "Type a whole number, without a part of one.")]
    [InlineData("many", "\"many\" does not read as a number. Type a whole number like 12.")]
    [InlineData("1000001", "That is more than 1,000,000. Type the number again.")]
    public void A_count_that_cannot_be_meant_is_answered(string typed, string words) => Assert.Equal(words, CountText.Parse(typed).Problem);

    [Theory]
    [InlineData("1", 1, 1)]
    [InlineData("1/2", 1, 2)]
    [InlineData("2/4", 1, 2)]
    [InlineData("½", 1, 2)]
    [InlineData("0.25", 1, 4)]
    [InlineData("0", 0, 1)]
    [InlineData("1/3", 1, 3)]
    public void A_part_is_read_exactly(string typed, int numerator, int denominator) =>
        Assert.Equal(Ratio.Of(numerator, denominator), RatioText.Parse(typed).Result);

    [Theory]
    [InlineData("", "Type a part of the whole, for example 1/2, or 1 for all of it.")]
    [InlineData("-1/2", "A part is never below zero. Type it without the minus.")]
    [InlineData("1/0", "\"1/0\" does not read as a part. Type it like 1/2, or 1 for all of it.")]
    [InlineData("half", "\"half\" does not read as a part. Type it like 1/2, or 1 for all of it.")]
    [InlineData("1001", "That is more than 1,000. Type the part again, for example 1/2.")]
    public void A_part_that_cannot_be_meant_is_answered(string typed, string words) => Assert.Equal(words, RatioText.Parse(typed).Problem);

    [Property]
    public void What_is_printed_is_read_back(Money money, PricePerPound rate, Proportion percent, Keyed keyed)
    {
        Assert.Equal(money, MoneyText.Parse(money.Print()).Result);
        Assert.Equal(rate, MoneyText.ParsePerPound(rate.Print()).Result);
        Assert.Equal(percent, ProportionText.Parse(percent.Print()).Result);

        var temperature = Temperature.FromHundredthsFahrenheit((int)(keyed.Count % 68_001) - 8_000);
        Assert.Equal(temperature, TemperatureText.ParseShowingHeat(temperature.Print()).Result);
        Assert.Equal(temperature, TemperatureText.ParseShowingCold(temperature.Print()).Result);

        var ratio = Ratio.Of(keyed.Count % 1000, keyed.Count % 977 + 1);
        Assert.Equal(ratio, RatioText.Parse(ratio.ToString()).Result);
    }
}
