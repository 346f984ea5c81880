using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Bench;

/// <summary>Cooking, chilling and fermenting records by address.</summary>
public sealed class ProcessTests(ShopUnderTest shop) : IClassFixture<ShopUnderTest>
{
    /// <summary>FSIS-GD-2021-14, Table 2, with the readings held at one temperature.</summary>
    [Theory]
    [InlineData("6.5", "0;145|3.98333333333;145", "verdict doesNotMeet, row 145, dwellSeconds 239, neededSeconds 240, comeUpMinutes null")]
    [InlineData("6.5", "0;145|4;145", "verdict meets, row 145, dwellSeconds 240, neededSeconds 240")]
    [InlineData("5", "0;150|1;150", "verdict meets, row 150, dwellSeconds 60, neededSeconds 52")]
    [InlineData("6.5", "0;150|1;150", "verdict doesNotMeet, row 150, dwellSeconds 60, neededSeconds 67")]
    [InlineData("6.5", "5;157.9|5.23333333333333;157.9", "verdict meets, row 157, dwellSeconds 14, neededSeconds 14")]
    [InlineData("7", "0;158|1;158", "verdict meets, row 158, dwellSeconds 60, neededSeconds 0")]
    // 20 minutes at 140 are further apart than the gap: 12 could have been met.
    [InlineData("6.5", "0;140|20;140", "verdict notShown")]
    // Readings of 120 °F leave nothing that a gap of 20 minutes could hide but what is above the table's first row.
    [InlineData("6.5", "0;120|10;120|20;120", "verdict doesNotMeet, row null, dwellSeconds 0, neededSeconds null")]
    public Task A_cooking_record(string log, string readings, string expected) =>
        shop.Expect($"lethality?log={log}{Readings(readings)}", expected);

    /// <summary>The same, p. 24 and the checks of its Table: 129.9 °F has no row, and a come-up of 6:01 takes the record out of the table.</summary>
    [Fact]
    public async Task What_takes_a_record_out_of_the_table()
    {
        await shop.Expect("lethality?log=6.5&maxGapMinutes=300&reading=0;129.9&reading=300;129.9", "verdict doesNotMeet, row null, dwellSeconds 0");
        await shop.Expect("lethality?log=6.5&maxGapMinutes=361&reading=0;50&reading=360;130&reading=365;160", "verdict meets, comeUpMinutes 360");
        await shop.Expect("lethality?log=6.5&maxGapMinutes=361&reading=0;50&reading=361;130&reading=366;160", "verdict doesNotMeet, comeUpMinutes 361");
        await shop.Expect("lethality?log=6.5&reading=0;50&reading=361;130&reading=366;160", "verdict notShown, comeUpMinutes 361");
        Assert.NotEmpty((await shop.Ask("lethality?log=6.5&maxGapMinutes=361&reading=0;50&reading=361;130&reading=366;160")).Json.GetProperty("findings").EnumerateArray());
    }

    /// <summary>A reading every half minute for sixteen hours is an address of forty thousand characters; at 145 °F all the while.</summary>
    [Fact]
    public Task A_long_record_is_read_whole() => shop.Expect(
        "lethality?log=6.5" + string.Concat(Enumerable.Range(0, 1921).Select(i => FormattableString.Invariant($"&reading={i / 2m};145.25"))),
        "verdict meets, row 145, dwellSeconds 57600");

    /// <summary>FSIS-GD-2021-14, Table 6: chicken 145 °F 13 min, turkey 13.8; whatever log is asked for.</summary>
    [Theory]
    [InlineData("chicken", "13", "verdict meets, row 145, neededSeconds 780")]
    [InlineData("turkey", "13", "verdict doesNotMeet, row 145, neededSeconds 828")]
    [InlineData("turkey", "13.8", "verdict meets, neededSeconds 828")]
    [InlineData("none", "13", "verdict meets, neededSeconds 180")]
    public Task Poultry_has_its_own_table(string poultry, string minutes, string expected) =>
        shop.Expect($"lethality?log=5&poultry={poultry}&reading=0;145&reading={minutes};145", expected);

    /// <summary>Ohio State University meat science.</summary>
    [Theory]
    [InlineData("1", "0;130|45;100|90;80|150;70|210;60|270;50|330;45|390;40", "verdict meets, firstMinutes 90, secondMinutes 300")]
    [InlineData("1", "0;130|45;100|91;80|150;70|210;60|270;50|330;45|390;40", "verdict doesNotMeet, firstMinutes 91, secondMinutes 299")]
    [InlineData("1", "0;130|45;100|90;80|150;70|210;60|270;50|330;45|391;40", "verdict notShown, firstMinutes 90, secondMinutes 240")]
    [InlineData("1", "0;125|60;80|120;40", "verdict notShown")]
    [InlineData("2", "0;120|60;80|120;74|180;69|240;64|300;60|360;55", "verdict meets, firstMinutes 60, secondMinutes 300")]
    [InlineData("2", "0;120|61;80|120;55|180;40", "verdict notShown")]
    [InlineData("2", "0;120|30;100|61;80|120;55|180;40", "verdict doesNotMeet, firstMinutes 61, secondMinutes 59")]
    public Task A_chilling_record(string option, string readings, string expected) =>
        shop.Expect($"cooling?option={option}{Readings(readings)}", expected);

    [Fact]
    public async Task Option_2_says_when_40_degrees_are_not_in_the_record()
    {
        var open = (await shop.Ask("cooling?option=2&reading=0;120&reading=60;80&reading=120;55")).Json.GetProperty("findings");
        var reached = (await shop.Ask("cooling?option=2&reading=0;120&reading=60;80&reading=120;40")).Json.GetProperty("findings");

        Assert.Contains("40 °F", Assert.Single(open.EnumerateArray()).GetProperty("text").GetString(), StringComparison.Ordinal);
        Assert.Empty(reached.EnumerateArray());
    }

    /// <summary>University fermentation log form, 2012: below 90 °F 1,200 degree-hours, 90 to 100 °F 1,000, above 900.</summary>
    [Theory]
    [InlineData("0;75|80;75", "80", "degreeHours 1200, limit 1200, verdict meets")]
    [InlineData("0;75|80.1;75", "80.1", "degreeHours 1201.5, limit 1200, verdict doesNotMeet")]
    [InlineData("0;80|60;80", "60", "degreeHours 1200, limit 1200, verdict meets")]
    [InlineData("0;90|33;90", "33", "degreeHours 990, limit 1000, verdict meets")]
    [InlineData("0;110|18;110", "18", "degreeHours 900, limit 900, verdict meets")]
    [InlineData("0;110|18.02;110", "18.02", "degreeHours 901, limit 900, verdict doesNotMeet")]
    // From 60 to 80 °F in ten hours is ten on average; what lies below 60 °F counts for nothing: from 50 to 60 °F none.
    [InlineData("0;50|10;60|20;80", "20", "degreeHours 100, limit 1200, verdict meets")]
    [InlineData("0;75|10;75", "", "degreeHours 150, limit 1200, verdict notShown")]
    [InlineData("0;75|101;75", "50", "degreeHours 0, limit 1200, verdict notShown")]
    public Task Degree_hours(string readings, string sour, string expected) =>
        shop.Expect($"degree-hours?ph53Hours={sour}{Readings(readings)}", expected);

    private static string Readings(string readings) => string.Concat(readings.Split('|').Select(reading => "&reading=" + reading));
}
