using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Bench;

/// <summary>Yield, girth, split and blend by address, with figures of the published texts.</summary>
public sealed class YieldsTests(ShopUnderTest shop) : IClassFixture<ShopUnderTest>
{
    [Theory]
    // Michigan State University Extension 01600637: 0.48 × FD ± 5 %, ± 15 %; 0.61 × FD − 3.7.
    [InlineData("deer", "fieldDressed", "boneless", "100", "typicalLb 48, usualLowLb 45.6, usualHighLb 50.4, extremeLowLb 40.8, extremeHighLb 55.2")]
    [InlineData("deer", "fieldDressed", "boneIn", "100", "typicalLb 57.3, usualLowLb 54.435, usualHighLb 60.165, extremeLowLb 48.705, extremeHighLb 65.895")]
    [InlineData("deer", "fieldDressed", "boneless", "120", "typicalLb 57.6")]
    [InlineData("deer", "fieldDressed", "boneIn", "120", "typicalLb 69.5")]
    [InlineData("deer", "fieldDressed", "boneless", "150", "typicalLb 72")]
    [InlineData("deer", "fieldDressed", "boneIn", "150", "typicalLb 87.8")]
    // Noble Research Institute 2012: 105 → 134 (126 to 141).
    [InlineData("deer", "fieldDressed", "live", "105", "typicalLb 134, usualLowLb 126, usualHighLb 141, extremeLowLb null, extremeHighLb null")]
    // A news column (C): 0.75, 0.70 to 0.85.
    [InlineData("deer", "fieldDressed", "hanging", "100", "typicalLb 75, usualLowLb null, extremeLowLb 70, extremeHighLb 85")]
    // As quoted from University of Wyoming bulletins (B): 0.58.
    [InlineData("deer", "hanging", "boneless", "75", "typicalLb 43.5, extremeLowLb 35.25, extremeHighLb 50.25")]
    // Common practice, no source: 0.85, no range.
    [InlineData("deer", "quarters", "boneless", "60", "typicalLb 51, usualLowLb null, usualHighLb null, extremeLowLb null, extremeHighLb null")]
    // Michigan State University Extension 01600636: 0.43 × FD; 0.57 × FD − 2.8; moose by size.
    [InlineData("elk", "fieldDressed", "boneless", "400", "typicalLb 172, usualLowLb 159.96, extremeHighLb 208.12")]
    [InlineData("moose", "fieldDressed", "boneIn", "400", "typicalLb 225.2")]
    // Alberta study: × 1.36.
    [InlineData("pronghorn", "fieldDressed", "live", "80", "typicalLb 108.8")]
    // Oklahoma Department of Agriculture: 1,000 → 610; 250 → 180 → 144.
    [InlineData("beef", "live", "hanging", "1000", "typicalLb 610, usualLowLb 600, usualHighLb 640, extremeLowLb 550, extremeHighLb 700")]
    [InlineData("beef", "hanging", "takeHome", "610", "typicalLb 430.05")]
    [InlineData("beef", "hanging", "boneless", "600", "typicalLb 300")]
    [InlineData("hog", "live", "hanging", "250", "typicalLb 180")]
    [InlineData("hog", "hanging", "takeHome", "180", "typicalLb 144")]
    // University of Wisconsin; University of Tennessee.
    [InlineData("lamb", "live", "hanging", "127", "typicalLb 67.31")]
    [InlineData("lamb", "hanging", "boneIn", "60", "typicalLb 42, usualLowLb 39, usualHighLb 45")]
    [InlineData("lamb", "hanging", "boneless", "60", "typicalLb 28.2")]
    [InlineData("goat", "live", "hanging", "77", "typicalLb 36.96")]
    [InlineData("goat", "hanging", "boneIn", "40", "typicalLb 30")]
    [InlineData("goat", "hanging", "boneless", "40", "typicalLb 20")]
    public Task A_yield(string species, string from, string to, string pounds, string expected) =>
        shop.Expect($"yield?species={species}&from={from}&to={to}&weightLb={pounds}", expected);

    /// <summary>SEAFWA 1976: adult 6.5520 H − 95.0128 and 5.6037 H − 94.0982; fawn 5.3003 H − 74.1489 and 3.9499 H − 55.6158.</summary>
    [Theory]
    [InlineData("36", "adult", "liveLb 140.8592, dressedLb 107.635")]
    [InlineData("26", "fawn", "liveLb 63.6589, dressedLb 47.0816")]
    [InlineData("20", "adult", "liveLb 36.0272")]
    [InlineData("50", "adult", "liveLb 232.5872")]
    public Task A_girth(string inches, string age, string expected) => shop.Expect($"girth?girthIn={inches}&age={age}", expected);

    [Theory]
    // Georgia FFA state meat problem 2016: 23 % and 70 % to 28 % in 500 lb.
    [InlineData("23", "70", "28", "500", "leanLb 446.8085, addedLb 53.1915, addedPct 10.6383, fatPct 28")]
    [InlineData("10", "25", "20", "1000", "leanLb 333.3333, addedLb 666.6667, fatPct 20")]
    // 90 and 50 lean to 80 lean.
    [InlineData("10", "50", "20", "100", "leanLb 75, addedLb 25, addedPct 25")]
    // USDA 17164 and 10004, 10006, 10005, 13335: deer 2.42 to 10 %.
    [InlineData("2.42", "88.69", "10", "100", "addedPct 8.7864")]
    [InlineData("2.42", "65.70", "10", "100", "addedPct 11.9785")]
    [InlineData("2.42", "53.01", "10", "100", "addedPct 14.9832")]
    [InlineData("2.42", "94", "10", "100", "addedPct 8.2769")]
    public Task A_blend(string lean, string added, string target, string block, string expected) =>
        shop.Expect($"blend?leanFatPct={lean}&addedFatPct={added}&targetFatPct={target}&blockLb={block}", expected);

    /// <summary>
    /// Worked by hand. Sausage 20 lb finished: green 20 ÷ 0.85 = 23.529, lean 23.529 × 0.70 ÷ 1.035 = 15.9136, so 15.91; fat 15.91 × 30/70 = 6.8186,
    /// 6.82; block 22.73; green 22.73 × 1.035 = 23.5256, 23.53; finished 23.53 × 0.85 = 20.0005, 20.00. Plain ground takes 40 − 15.91 = 24.09.
    /// </summary>
    [Fact]
    public Task A_split_with_a_finished_weight() => shop.Expect(
        "split?leanLb=40&divisionLb=0.01&ask=Sausage;finished;20;70;3.5;15;0;0",
        "allotments[0].name Sausage, allotments[0].leanLb 15.91, allotments[0].fatLb 6.82, allotments[0].blockLb 22.73, allotments[0].greenLb 23.53, allotments[0].finishedLb 20, "
        + "allotments[1].name plain ground, allotments[1].leanLb 24.09, allotments[1].finishedLb 24.09, sumLb 40");

    /// <summary>25 % of 40 is 10; own lean 8; the rest is 22. A smallest run of 50 lb drops the fourth, whose lean goes to the rest.</summary>
    [Fact]
    public async Task Asks_of_every_kind_in_their_order()
    {
        const string Asks = "Rest;rest;;100;0;0;0;0|Sticks;percent;25;100;0;0;0;0|Jerky;lean;8;100;0;60;0;0|Bologna;lean;9;100;0;0;50;0";
        const string Expected = "allotments[0].leanLb 22, allotments[1].leanLb 10, allotments[2].leanLb 8, allotments[2].finishedLb 3.2, allotments[3].leanLb 0, allotments[3].greenLb 0, sumLb 40";
        var once = "split?leanLb=40&divisionLb=0.01&ask=" + Uri.EscapeDataString(Asks.Replace("|", "\r\n", StringComparison.Ordinal));
        var repeated = "split?leanLb=40&divisionLb=0.01" + string.Concat(Asks.Split('|').Select(ask => "&ask=" + Uri.EscapeDataString(ask)));

        await shop.Expect(once, Expected);
        await shop.Expect(repeated, Expected);

        Assert.Equal((await shop.Ask(once)).Json.GetRawText(), (await shop.Ask(repeated)).Json.GetRawText());
        var allotments = (await shop.Ask(repeated)).Json.GetProperty("allotments");
        Assert.Equal(4, allotments.GetArrayLength());
        Assert.Contains("smallest run", Assert.Single(allotments[3].GetProperty("reasons").EnumerateArray()).GetString(), StringComparison.Ordinal);
    }
}
