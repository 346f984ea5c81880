using System.Globalization;
using FsCheck.Xunit;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Measures;

[Properties(MaxTest = 1000, Arbitrary = [typeof(Sizes)])]
public sealed class WeightTextTests
{
    private const decimal MgPerLb = 453_592.37m;
    private const decimal MgPerOz = 28_349.523125m;

    public static TheoryData<string, decimal> Readable => new()
    {
        { "12.4", 12.4m * MgPerLb },
        { "0", 0m },
        { "0.01", 0.01m * MgPerLb },
        { " 12.4 lb ", 12.4m * MgPerLb },
        { "12.4lb", 12.4m * MgPerLb },
        { "12.4 LBS.", 12.4m * MgPerLb },
        { "12 pounds", 12m * MgPerLb },
        { "12#", 12m * MgPerLb },
        { "12 lb 6 oz", 12m * MgPerLb + 6m * MgPerOz },
        { "12lb6oz", 12m * MgPerLb + 6m * MgPerOz },
        { "12 lb. 6 oz.", 12m * MgPerLb + 6m * MgPerOz },
        { "12 lb, 6.5 oz", 12m * MgPerLb + 6.5m * MgPerOz },
        { "12 lb - 6 ozs", 12m * MgPerLb + 6m * MgPerOz },
        { "12 pounds and 6 ounces", 12m * MgPerLb + 6m * MgPerOz },
        { "12 lb 6", 12m * MgPerLb + 6m * MgPerOz },
        { "12 lb 6 1/2 oz", 12m * MgPerLb + 6.5m * MgPerOz },
        { "12-6", 12m * MgPerLb + 6m * MgPerOz },
        { "12 - 6", 12m * MgPerLb + 6m * MgPerOz },
        { "12–6", 12m * MgPerLb + 6m * MgPerOz },
        { "12-15.9", 12m * MgPerLb + 15.9m * MgPerOz },
        { "0-6", 6m * MgPerOz },
        { "5.6 kg", 5_600_000m },
        { "5.6 KG", 5_600_000m },
        { "5.6 kgs", 5_600_000m },
        { "1 kilo", 1_000_000m },
        { "2 kilos", 2_000_000m },
        { "1 kilogram", 1_000_000m },
        { "2 kilograms", 2_000_000m },
        { "1 gram", 1_000m },
        { "1 pound", 1m * MgPerLb },
        { "2 lbs", 2m * MgPerLb },
        { "1 ounce", 1m * MgPerOz },
        { "2 ounces", 2m * MgPerOz },
        { "2 ozs", 2m * MgPerOz },
        { "350 g", 350_000m },
        { "350 grams", 350_000m },
        { "6 oz", 6m * MgPerOz },
        { "1/2 oz", 0.5m * MgPerOz },
        { "1,234.5", 1234.5m * MgPerLb },
        { "12 1/2 lb", 12.5m * MgPerLb },
        { "12½ lb", 12.5m * MgPerLb },
        { "3/4 lb", 0.75m * MgPerLb },
        { ".5", 0.5m * MgPerLb },
        { "12.", 12m * MgPerLb },
        { "100000", 100_000m * MgPerLb },
        { "100,000 lb", 100_000m * MgPerLb },
    };

    [Theory]
    [InlineData("20.2", WeightUnit.Gram)]
    [InlineData("20.2 g", WeightUnit.Gram)]
    [InlineData("0.71 oz", WeightUnit.Ounce)]
    [InlineData("1 lb 2 oz", WeightUnit.Ounce)]
    [InlineData("1-2", WeightUnit.Ounce)]
    [InlineData("1.2 lbs", WeightUnit.Pound)]
    [InlineData("0.5 KG", WeightUnit.Kilogram)]
    [InlineData("much", WeightUnit.Gram)]
    [InlineData("", WeightUnit.Gram)]
    public void The_unit_that_was_typed_is_known(string typed, WeightUnit unit) => Assert.Equal(unit, WeightText.UnitOf(typed, WeightUnit.Gram));

    [Theory]
    [MemberData(nameof(Readable))]
    public void What_people_type_is_read(string typed, decimal milligrams)
    {
        var parsed = WeightText.Parse(typed, WeightUnit.Pound);

        Assert.Null(parsed.Problem);
        Assert.Equal(decimal.Round(milligrams, 0, MidpointRounding.AwayFromZero), parsed.Result.Milligrams);
    }

    [Theory]
    [InlineData(WeightUnit.Pound, 1_360_777)]
    [InlineData(WeightUnit.Ounce, 85_049)]
    [InlineData(WeightUnit.Kilogram, 3_000_000)]
    [InlineData(WeightUnit.Gram, 3_000)]
    public void A_bare_figure_is_in_the_assumed_unit(WeightUnit assumed, long milligrams) =>
        Assert.Equal(milligrams, WeightText.Parse("3", assumed).Result.Milligrams);

    [Theory]
    [InlineData(null, "Type a weight, for example 12.4 or 12 lb 6 oz.")]
    [InlineData("   ", "Type a weight, for example 12.4 or 12 lb 6 oz.")]
    [InlineData("-3", "A weight is never below zero. Type it without the minus.")]
    [InlineData("\u22123 lb", "A weight is never below zero. Type it without the minus.")]
    [InlineData("heavy", "\"heavy\" does not read as a weight. Type it like 12.4 or 12 lb 6 oz.")]
    [InlineData("12,4", "\"12,4\" does not read as a weight. Type it like 12.4 or 12 lb 6 oz.")]
    [InlineData("12..4", "\"12..4\" does not read as a weight. Type it like 12.4 or 12 lb 6 oz.")]
    [InlineData("1,23", "\"1,23\" does not read as a weight. Type it like 12.4 or 12 lb 6 oz.")]
    [InlineData("12 6", "\"12 6\" does not read as a weight. Type it like 12.4 or 12 lb 6 oz.")]
    [InlineData("12 stone", "\"12 stone\" does not read as a weight. Type it like 12.4 or 12 lb 6 oz.")]
    [InlineData("12 3/2 lb", "\"12 3/2 lb\" does not read as a weight. Type it like 12.4 or 12 lb 6 oz.")]
    [InlineData("1/0", "\"1/0\" does not read as a weight. Type it like 12.4 or 12 lb 6 oz.")]
    [InlineData("12 lb 1/2", "\"12 lb 1/2\" does not read as a weight. Type it like 12.4 or 12 lb 6 oz.")]
    [InlineData("12-1/2", "\"12-1/2\" does not read as a weight. Type it like 12.4 or 12 lb 6 oz.")]
    [InlineData("1e3", "\"1e3\" does not read as a weight. Type it like 12.4 or 12 lb 6 oz.")]
    [InlineData("١٢", "\"١٢\" does not read as a weight. Type it like 12.4 or 12 lb 6 oz.")]
    [InlineData("12 lb 3/0 oz", "\"12 lb 3/0 oz\" does not read as a weight. Type it like 12.4 or 12 lb 6 oz.")]
    [InlineData("1/0 lb 3 oz", "\"1/0 lb 3 oz\" does not read as a weight. Type it like 12.4 or 12 lb 6 oz.")]
    [InlineData("9999999999999999999999999999", "\"999999999999999999999999…\" does not read as a weight. Type it like 12.4 or 12 lb 6 oz.")]
    [InlineData("000000000000000000000000000000000000000000000000000000000000012", "\"000000000000000000000000…\" does not read as a weight. Type it like 12.4 or 12 lb 6 oz.")]
    [InlineData("999999999999999999999999999999", "\"999999999999999999999999…\" does not read as a weight. Type it like 12.4 or 12 lb 6 oz.")]
    [InlineData("1,23-4", "\"1,23-4\" does not read as a weight. Type it like 12.4 or 12 lb 6 oz.")]
    [InlineData("12 lbx", "\"12 lbx\" does not read as a weight. Type it like 12.4 or 12 lb 6 oz.")]
    [InlineData("12 gr", "\"12 gr\" does not read as a weight. Type it like 12.4 or 12 lb 6 oz.")]
    [InlineData("12 ounced", "\"12 ounced\" does not read as a weight. Type it like 12.4 or 12 lb 6 oz.")]
    [InlineData("12.5 lb 6 oz", "Type whole pounds before the ounces, for example 12 lb 6 oz.")]
    [InlineData("12 lb 16 oz", "There are 16 ounces to the pound: type less than 16 behind the pounds.")]
    [InlineData("12-16", "There are 16 ounces to the pound: type less than 16 behind the pounds.")]
    [InlineData("100000.01", "That is more than 100,000 lb. Type the weight again.")]
    [InlineData("99999999999999999999999999", "That is more than 100,000 lb. Type the weight again.")]
    [InlineData("45360 kg", "That is more than 100,000 lb. Type the weight again.")]
    public void What_cannot_be_meant_is_answered_with_what_to_type(string? typed, string words)
    {
        var parsed = WeightText.Parse(typed, WeightUnit.Pound);

        Assert.False(parsed.IsGood);
        Assert.Equal(words, parsed.Problem);
        Assert.Throws<InvalidOperationException>(() => parsed.Result);
    }

    [Fact]
    public void A_very_long_text_is_answered_shortly() =>
        Assert.True(WeightText.Parse(new string('9', 5000), WeightUnit.Pound).Problem!.Length < 120);

    [Property]
    public void What_a_scale_prints_is_read_back(Keyed keyed)
    {
        Assert.Equal(keyed.Weight, WeightText.Parse(keyed.Division.Print(keyed.Weight), WeightUnit.Gram).Result);
        Assert.Equal(keyed.Weight, WeightText.Parse(keyed.Division.PrintFigure(keyed.Weight), keyed.Division.Unit).Result);
        Assert.Equal(keyed.Weight, WeightText.Parse(keyed.Figure.ToString(CultureInfo.InvariantCulture), keyed.Division.Unit).Result);
    }

    [Property]
    public void Pounds_and_ounces_are_read_back(Keyed keyed)
    {
        if (keyed.Division.Unit == WeightUnit.Ounce)
            Assert.Equal(keyed.Weight, WeightText.Parse(WeightText.PoundsAndOunces(keyed.Weight, keyed.Division), WeightUnit.Pound).Result);
    }

    [Theory]
    [InlineData("0", "0.0 oz")]
    [InlineData("0.1", "0.1 oz")]
    [InlineData("15.9", "15.9 oz")]
    [InlineData("15.95", "1 lb 0.0 oz")]
    [InlineData("16", "1 lb 0.0 oz")]
    [InlineData("35.4", "2 lb 3.4 oz")]
    [InlineData("-35.4", "-2 lb 3.4 oz")]
    [InlineData("19200.05", "1,200 lb 0.1 oz")]
    public void Pounds_and_ounces_print_whole_pounds_first(string ounces, string printed) =>
        Assert.Equal(printed, WeightText.PoundsAndOunces(
            Weight.FromOunces(decimal.Parse(ounces, CultureInfo.InvariantCulture)), ScaleDivision.Of(WeightUnit.Ounce, 0.1m)));

    [Fact]
    public void Pounds_and_ounces_need_a_division_of_ounces() =>
        Assert.Throws<ArgumentException>(() => WeightText.PoundsAndOunces(Weight.Zero, ScaleDivision.HundredthPound));
}
