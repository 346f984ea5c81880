using FsCheck.Xunit;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Measures;

[Properties(MaxTest = 1000, Arbitrary = [typeof(Sizes)])]
public sealed class ScaleDivisionTextTests
{
    [Theory]
    [InlineData("0.01 lb", WeightUnit.Pound, "0.01")]
    [InlineData("0.5lb", WeightUnit.Pound, "0.5")]
    [InlineData("1/2 lbs.", WeightUnit.Pound, "0.5")]
    [InlineData("½ pound", WeightUnit.Pound, "0.5")]
    [InlineData("2 pounds", WeightUnit.Pound, "2")]
    [InlineData(".1 oz", WeightUnit.Ounce, "0.1")]
    [InlineData("1 ounce", WeightUnit.Ounce, "1")]
    [InlineData("2 OUNCES", WeightUnit.Ounce, "2")]
    [InlineData("0.005 kg", WeightUnit.Kilogram, "0.005")]
    [InlineData("0.1 g", WeightUnit.Gram, "0.1")]
    [InlineData("5 gram", WeightUnit.Gram, "5")]
    [InlineData("1,000 grams", WeightUnit.Gram, "1000")]
    [InlineData("0.001 g", WeightUnit.Gram, "0.001")] // a milligram
    [InlineData("0.002 g", WeightUnit.Gram, "0.002")]
    [InlineData("0.0001 lb", WeightUnit.Pound, "0.0001")]
    public void A_step_is_read(string typed, WeightUnit unit, string step) =>
        Assert.Equal(ScaleDivision.Of(unit, decimal.Parse(step, System.Globalization.CultureInfo.InvariantCulture)), ScaleDivisionText.Parse(typed).Result);

    [Theory]
    [InlineData(null, "Type the smallest step the scale shows, for example 0.5 lb.")]
    [InlineData("  ", "Type the smallest step the scale shows, for example 0.5 lb.")]
    [InlineData("-0.1 g", "A step is above zero. Type it without the minus.")]
    [InlineData("fine", "\"fine\" does not read as a step of a scale. Type it like 0.5 lb or 0.1 g.")]
    [InlineData("0,5 lb", "\"0,5 lb\" does not read as a step of a scale. Type it like 0.5 lb or 0.1 g.")]
    [InlineData("1/0 lb", "\"1/0 lb\" does not read as a step of a scale. Type it like 0.5 lb or 0.1 g.")]
    [InlineData("0.5", "Type the unit behind the step: lb, oz, kg or g.")]
    [InlineData("0.5 stone", "Type the unit behind the step: lb, oz, kg or g.")]
    [InlineData("0 lb", "No scale has such a step. Type it like 0.5 lb, 0.01 lb or 0.1 g.")]
    [InlineData("1/3 lb", "No scale has such a step. Type it like 0.5 lb, 0.01 lb or 0.1 g.")]
    [InlineData("0.00009 lb", "No scale has such a step. Type it like 0.5 lb, 0.01 lb or 0.1 g.")]
    [InlineData("0.0015 g", "No scale has such a step. Type it like 0.5 lb, 0.01 lb or 0.1 g.")]
    [InlineData("0.0005 g", "No scale has such a step. Type it like 0.5 lb, 0.01 lb or 0.1 g.")]
    [InlineData("1000.1 kg", "No scale has such a step. Type it like 0.5 lb, 0.01 lb or 0.1 g.")]
    public void A_step_that_no_scale_has_is_answered(string? typed, string words) => Assert.Equal(words, ScaleDivisionText.Parse(typed).Problem);

    [Property]
    public void A_step_as_printed_is_read_back(Keyed keyed) =>
        Assert.Equal(keyed.Division, ScaleDivisionText.Parse(keyed.Division.ToString()).Result);
}
