using ProcessorDesk.Trade.Blending;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Published;

/// <summary>Source: USDA National Nutrient Database, Standard Reference; rows by their NDB number.</summary>
public sealed class UsdaNutrientDatabase
{
    [Theory]
    [InlineData("deer", 17164, "2.42")]
    [InlineData("elk", 17166, "1.45")]
    [InlineData("pronghorn", 17144, "2.03")]
    [InlineData("moose", 17172, "0.74")]
    [InlineData("bison", 17156, "1.84")]
    [InlineData("wildBoar", 17158, "3.33")]
    [InlineData("bear", 17146, "8.30")]
    [InlineData("goat", 17168, "2.31")]
    [InlineData("porkBelly", 10005, "53.01")]
    [InlineData("porkFat", 10006, "65.70")]
    [InlineData("porkBackfat", 10004, "88.69")]
    [InlineData("groundPork", 10219, "21.19")]
    [InlineData("beefSuet", 13335, "94.00")]
    public void Fat_contents_stand_with_their_row(string id, int ndbNumber, string percent)
    {
        var content = FatContents.Find(id);

        Assert.Equal((ndbNumber, 'A'), (content.NdbNumber, content.Mark));
        Assert.Equal(decimal.Parse(percent, System.Globalization.CultureInfo.InvariantCulture), content.Fat.Percent);
    }

    [Theory]
    [InlineData("groundBeef95", 5)]
    [InlineData("groundBeef90", 10)]
    [InlineData("groundBeef85", 15)]
    [InlineData("groundBeef80", 20)]
    [InlineData("groundBeef75", 25)]
    [InlineData("groundBeef70", 30)]
    [InlineData("porkTrim72", 28)]
    [InlineData("porkTrim50", 50)]
    [InlineData("porkTrim42", 58)]
    public void Lean_points_leave_the_rest_to_fat(string id, int percent) => Assert.Equal(percent, FatContents.Find(id).Fat.Percent);

    [Fact]
    public void Ids_are_their_own_and_farmed_ground_deer_is_not_among_them()
    {
        Assert.Equal(FatContents.All.Count, FatContents.All.Select(content => content.Id).Distinct().Count());
        Assert.DoesNotContain(FatContents.All, content => content.NdbNumber == 17343);
        Assert.Throws<ArgumentException>(() => FatContents.Find("unicorn"));
    }

    /// <summary>Added part of the block = (target − 2.42) / (added − 2.42).</summary>
    [Theory]
    [InlineData(10, "porkBackfat", "8.79")]
    [InlineData(10, "porkFat", "11.98")]
    [InlineData(10, "porkBelly", "14.98")]
    [InlineData(10, "beefSuet", "8.28")]
    [InlineData(20, "porkBackfat", "20.38")]
    [InlineData(20, "porkFat", "27.78")]
    [InlineData(20, "porkBelly", "34.75")]
    [InlineData(20, "beefSuet", "19.20")]
    public void Deer_to_a_fat_target(int target, string added, string percent)
    {
        var fat = FatContents.Find(added).Fat;
        var expected = decimal.Parse(percent, System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(expected, decimal.Round((target - 2.42m) / (fat.Percent - 2.42m) * 100m, 2, MidpointRounding.AwayFromZero));

        var square = new LeanFatSquare(FatContents.Find("deer").Fat, fat, Proportion.FromPercent(target));

        Assert.Equal(expected, decimal.Round(square.AddedShare.ToDecimal() * 100m, 2, MidpointRounding.AwayFromZero));
    }
}
