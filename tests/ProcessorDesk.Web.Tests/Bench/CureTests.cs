using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Bench;

/// <summary>
/// Cure by address. Limits: 9 CFR 424.21(c) and 424.22(b); ways of working: USDA FSIS Directive 7620.3. The pounds, ounces and grams are those of
/// NIST Handbook 44: 1 oz is 28.349523125 g.
/// </summary>
public sealed class CureTests(ShopUnderTest shop) : IClassFixture<ShopUnderTest>
{
    [Theory]
    // 1/4 oz of nitrite to 100 lb; 4 oz of 6.25 % are just that: 156.25 ppm. 4 oz are 113.398 g.
    [InlineData("method=comminuted&meatLb=100&cureOz=4&nitritePct=6.25", "nitritePpm 156.25, nitratePpm 0, nitriteLimitPpm 156.25, nitrateLimitPpm 1718.75, meets true, belowMinimum false, maxCureG 113.3")]
    [InlineData("method=comminuted&meatLb=25&cureOz=1&nitritePct=6.25", "nitritePpm 156.25, meets true, maxCureG 28.3")]
    [InlineData("method=comminuted&meatLb=100&cureOz=4.01&nitritePct=6.25", "nitritePpm 156.6406, meets false")]
    // A published wild-game ring sausage: 2 oz on 45 lb is 173.61 ppm and over.
    [InlineData("method=comminuted&meatLb=45&cureOz=2&nitritePct=6.25", "nitritePpm 173.6111, meets false, maxCureG 51")]
    // 2.5 g/kg of 6.25 %; 1 g of pure nitrite in 5 kg: 200 ppm. 1 kg is 2.20462262184878 lb.
    [InlineData("method=comminuted&meatLb=2.20462262184878&cureG=2.5&nitritePct=6.25", "nitritePpm 156.25, meets true, maxCureG 2.5")]
    [InlineData("method=comminuted&meatLb=11.0231131092439&cureG=1&nitritePct=100", "nitritePpm 200, meets false, maxCureG 0.7")]
    // 6.25/4 cure at 4 oz per 100 lb: nitrite 156.25, nitrate 100.
    [InlineData("method=comminuted&meatLb=100&cureOz=4&nitritePct=6.25&nitratePct=4", "nitritePpm 156.25, nitratePpm 100, meets true")]
    // Ground meat under 120 ppm that is kept cold.
    [InlineData("method=comminuted&meatLb=100&cureOz=3&nitritePct=6.25", "nitritePpm 117.1875, meets true, belowMinimum true")]
    [InlineData("method=comminuted&meatLb=100&cureOz=0&nitritePct=6.25", "nitritePpm 0, meets false, belowMinimum true")]
    // Water 1,000 g, salt 110, sugar 124, cure 32 at 5.88 %, pumped 10 %: 148.63 ppm. 1,266 g are 2.79105223926 lb.
    [InlineData("method=pumped&pickleLb=2.79105223926&cureG=32&nitritePct=5.88&pumpPct=10", "nitritePpm 148.6256, nitriteLimitPpm 200, nitrateLimitPpm 700, meets true")]
    // 4.2 oz of 6.25 % to 8.345 lb of water, 10 % pick-up: 190.6 with the cure's own weight in the pickle.
    [InlineData("method=immersionPickup&pickleLb=8.6075&cureOz=4.2&nitritePct=6.25&pumpPct=10", "nitritePpm 190.6041, meets true")]
    // 2 lb of nitrite in 1,000 lb of pickle at 10 %: 200 ppm, exactly the limit. 2 lb are 907.18474 g.
    [InlineData("method=pumped&pickleLb=1000&cureOz=32&nitritePct=100&pumpPct=10", "nitritePpm 200, meets true, maxCureG 907.1")]
    // Method two: 0.2 lb of nitrite, 800 lb of meat, 200 lb of pickle.
    [InlineData("method=immersionEquilibrium&meatLb=800&pickleLb=200&cureOz=3.2&nitritePct=100", "nitritePpm 200, meets true")]
    // 1 oz to 100 lb, 3 1/2 oz of nitrate.
    [InlineData("method=dry&meatLb=100&cureOz=16&nitritePct=6.25", "nitritePpm 625, nitriteLimitPpm 625, nitrateLimitPpm 2187.5, meets true, maxCureG 453.5")]
    // Bacon: 120 sodium and 148 potassium with 550 ppm of accelerator; 200 and 246 dry; nitrate none.
    [InlineData("method=baconPumped&pickleLb=100&cureOz=1.92&nitritePct=100&pumpPct=10&acceleratorPpm=550", "nitritePpm 120, nitriteLimitPpm 120, nitrateLimitPpm null, meets true, belowMinimum false")]
    [InlineData("method=baconPumped&pickleLb=100&cureOz=1.92&nitritePct=100&pumpPct=10", "nitritePpm 120, meets false")]
    [InlineData("method=baconPumped&pickleLb=100&cureOz=1.92&nitritePct=90&nitratePct=1&pumpPct=10&acceleratorPpm=550", "nitrateLimitPpm null, meets false, maxCureG 0")]
    [InlineData("method=baconImmersion&meatLb=100&pickleLb=100&cureOz=1&nitritePct=6.25&salt=potassium", "nitriteLimitPpm 148, meets true")]
    [InlineData("method=baconDry&meatLb=100&cureOz=5.12&nitritePct=6.25", "nitritePpm 200, nitriteLimitPpm 200, meets true")]
    [InlineData("method=baconDry&meatLb=100&cureOz=6&nitritePct=6.25&salt=potassium", "nitritePpm 234.375, nitriteLimitPpm 246, meets true")]
    public Task A_dose(string address, string expected) => shop.Expect("cure?" + address, expected);

    [Fact]
    public async Task Without_a_dose_only_the_most_is_answered()
    {
        await shop.Expect(
            "cure?method=comminuted&meatLb=100&nitritePct=6.25",
            "maxCureG 113.3, nitritePpm null, nitratePpm null, nitriteLimitPpm null, nitrateLimitPpm null, meets null, belowMinimum null");
        await shop.Expect("cure?method=comminuted&meatLb=100&nitritePct=6.25&smallScaleG=1", "maxCureG 113");
    }

    [Fact]
    public async Task A_refused_dose_names_limit_and_source()
    {
        var finding = Assert.Single((await shop.Ask("cure?method=comminuted&meatLb=45&cureOz=2&nitritePct=6.25")).Json.GetProperty("findings").EnumerateArray());

        Assert.Contains("156.25 ppm", finding.GetProperty("allowed").GetString(), StringComparison.Ordinal);
        Assert.Contains("424.21", finding.GetProperty("source").GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("method=comminuted&meatLb=100&cureOz=4", 400, "nitritePct")]
    [InlineData("method=comminuted&meatLb=100&cureOz=4&cureG=113&nitritePct=6.25", 400, "cureG")]
    [InlineData("method=comminuted&cureOz=4&nitritePct=6.25", 400, "meatLb")]
    [InlineData("method=comminuted&meatLb=0&cureOz=4&nitritePct=6.25", 400, "meatLb")]
    [InlineData("method=smoked&meatLb=100&nitritePct=6.25", 400, "method")]
    [InlineData("method=pumped&pickleLb=100&nitritePct=6.25", 400, "pumpPct")]
    [InlineData("method=pumped&pickleLb=100&nitritePct=6.25&pumpPct=0.1", 400, "pumpPct")]
    [InlineData("method=pumped&pumpPct=10&nitritePct=6.25", 400, "pickleLb")]
    [InlineData("method=comminuted&meatLb=100&cureOz=4&nitritePct=60&nitratePct=50", 400, "nitritePct")]
    [InlineData("method=comminuted&meatLb=100&cureOz=-4&nitritePct=6.25", 400, "cureOz")]
    [InlineData("method=comminuted&meatLb=100&nitritePct=6.25&smallScaleG=0", 400, "smallScaleG")]
    [InlineData("method=comminuted&meatLb=100&nitritePct=6.25&salt=table", 400, "salt")]
    public Task What_has_to_be_stated_is_never_assumed(string address, int status, string field) => shop.ExpectRefusal("cure?" + address, status, field);

    /// <summary>North Dakota State University's venison summer sausage to 100 lb: salt 28, cure 4, pepper 12 oz; 4 oz are 113.398 g, down to 113.3.</summary>
    [Fact]
    public Task A_formula_scaled_to_a_hundred_pounds() => shop.Expect(
        "formula?blockLb=100&cured=yes&line=Salt;28;ozPer100Lb;0;0&line=Cure;1;ozPer25Lb;6.25;0&line=Pepper;12;ozPer100Lb;0;0",
        "lines[0].amountOz 28, lines[0].amountG 793.8, lines[1].amountOz 4, lines[1].amountG 113.3, lines[1].exactG 113.3981, lines[2].amountOz 12, meets true, nitratePpm 0");

    [Fact]
    public async Task A_cured_formula_without_cure_is_refused()
    {
        await shop.Expect("formula?blockLb=100&cured=yes&line=Salt;2;percent;0;0", "meets false, nitritePpm 0, lines[0].amountG 907.2");
        await shop.Expect("formula?blockLb=100&line=Salt;2;percent;0;0", "meets null, nitritePpm null");
        await shop.ExpectRefusal("formula?blockLb=100&line=Salt;2;pinch;0;0", 400, "line");
        await shop.ExpectRefusal("formula?blockLb=100&line=Cure;2;percent;6.25", 400, "line");
    }
}
