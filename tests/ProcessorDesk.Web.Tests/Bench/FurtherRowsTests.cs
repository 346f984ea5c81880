using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Bench;

/// <summary>Yield test, yield grade, chill loss, least cost, retention and ticket codes by address.</summary>
public sealed class FurtherRowsTests(ShopUnderTest shop) : IClassFixture<ShopUnderTest>
{
    private const string Loin = "yield-test?purchasedLb=12&pricePerLb=6.65&part=fat;3;0&part=kidneys;1;6.10&part=flanks;1.5;4.60&part=loss;0.5;0&usableLb=";

    /// <summary>A food-cost text (B): a lamb loin of 12 lb at $6.65; 79.80 − 6.10 − 6.90 = 66.80; ÷ 6 = 11.1333; ÷ 6.65 = 1.6742.</summary>
    [Fact]
    public Task A_butchers_test() => shop.Expect(Loin + "6", "usableValue 66.8, costPerUsableLb 11.1333, yieldPct 50, costFactor 1.6742");

    /// <summary>7 CFR 54.105.</summary>
    [Theory]
    [InlineData("fatIn=0.3&kphPct=2.5&hotLb=500&ribeyeIn2=11.5", "calculated 1.97, grade 1")]
    [InlineData("fatIn=0.4&kphPct=2.5&hotLb=800&ribeyeIn2=16", "calculated 1.92, grade 1")]
    public Task A_yield_grade(string address, string expected) => shop.Expect("yield-grade?" + address, expected);

    /// <summary>Mississippi State University P3489: 750 lb hot, 2 to 5 %: 735.0 to 712.5.</summary>
    [Theory]
    [InlineData("species=beef&hotLb=750", "lowLb 712.5, highLb 735, lossPct null, verdict null")]
    [InlineData("species=beef&hotLb=750&chilledLb=727.5", "lossPct 3, verdict insideUsual")]
    [InlineData("species=beef&hotLb=750&chilledLb=700", "lossPct 6.6667, verdict outside")]
    public Task A_chill_loss(string address, string expected) => shop.Expect("chill-loss?" + address, expected);

    /// <summary>An algebra text (B): beef 75 %, pork 60 % lean, at least 70 % lean, 150 lb; and the cheaper of two that both fit.</summary>
    [Theory]
    [InlineData("blockLb=150&maxFatPct=30&material=Beef;25;3.10;0;100;&material=Pork;40;1.90;0;100;", "parts[0].lb 100, parts[0].weighedLb 100, parts[1].lb 50, fatPct 30, costPerLb 2.7")]
    [InlineData("blockLb=100&maxFatPct=50&material=Beef;25;3.10;0;100;&material=Pork;40;1.90;0;100;30", "parts[0].lb 70, parts[1].lb 30, parts[1].pct 30")]
    public Task A_least_cost_blend(string address, string expected) => shop.Expect("least-cost?" + address, expected);

    /// <summary>9 CFR 320.3; 25 TAC 221.14; ARSD 41:06:03:11.</summary>
    [Theory]
    [InlineData("rule=federal&handedOver=2025-11-15", "keepUntil 2027-12-31")]
    [InlineData("rule=federal&rule=texasCustom&processed=2025-11-15&handedOver=2025-11-15", "keepUntil 2027-12-31, each[1].keepUntil 2027-11-15")]
    [InlineData("rule=southDakotaGame&received=2025-11-15", "keepUntil 2026-11-15")]
    public Task Keeping_records(string address, string expected) => shop.Expect("retention?" + address, expected);

    /// <summary>Crockford's base 32 as a published library tests it: 1234 is 16JD, 0 is 00; 16JE is refused.</summary>
    [Theory]
    [InlineData("number=1234", "code 16JD, number 1234, isTicket false")]
    [InlineData("code=16jd", "number 1234, code 16JD")]
    [InlineData("code=L6-Jd", "number 1234")]
    [InlineData("number=0", "code 00")]
    public Task A_ticket_code(string address, string expected) => shop.Expect("ticket-code?" + address, expected);

    [Theory]
    [InlineData(Loin + "7", 400, "usableLb")]
    [InlineData("yield-grade?fatIn=0.3&kphPct=2.5&hotLb=500&ribeyeIn2=0", 400, "ribeyeIn2")]
    [InlineData("chill-loss?species=elk&hotLb=300", 422, "species")]
    [InlineData("least-cost?blockLb=150&maxFatPct=20&material=Beef;25;3.10;0;100;&material=Pork;40;1.90;0;100;", 422, "maxFatPct")]
    [InlineData("least-cost?blockLb=150&material=Beef;25;3.105;0;100;", 400, "material")]
    [InlineData("least-cost?blockLb=150&minFatPct=30&maxFatPct=20&material=Beef;25;3.10;0;100;", 400, "minFatPct")]
    [InlineData("least-cost?blockLb=150&material=Beef;25;3.10;0;50;", 422, "material")]
    [InlineData("retention?rule=southDakotaGame&handedOver=2025-11-15", 400, "received")]
    [InlineData("retention?rule=federal&handedOver=2025-02-30", 400, "handedOver")]
    [InlineData("retention?handedOver=2025-02-28", 400, "rule")]
    [InlineData("ticket-code?code=16JE", 400, "code")]
    [InlineData("ticket-code?code=16JD&number=1234", 400, "code")]
    [InlineData("ticket-code?number=1.5", 400, "number")]
    public Task An_impossible_request(string address, int status, string field) => shop.ExpectRefusal(address, status, field);
}
