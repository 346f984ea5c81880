using System.Globalization;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Counter;

/// <summary>What the page foretells, against figures worked by hand.</summary>
public sealed class OutlookTests(CounterShop shop) : IClassFixture<CounterShop>
{
    [Fact]
    public async Task Two_deer_are_foretold_together_with_range_and_source()
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);
        var page = await desk.Open("/Counter/DropOff");
        page = await page.Send("Add another animal", ("Input.Animals[0].State", "FieldDressed"), ("Input.Animals[0].Weight", "128.5"));

        page = await page.Send("Work it out again", ("Input.Animals[1].State", "FieldDressed"), ("Input.Animals[1].Weight", "96"));

        // 224.5 lb × 0.48 = 107.76; ± 5 % = 102.372 and 113.148; ± 15 % = 91.596 and 123.924. Michigan State University Extension 01600637.
        page.Expect("107.8 lb boneless", "102.4 to 113.1 lb", "91.6 to 123.9 lb", "Michigan State University Extension");
    }

    [Fact]
    public async Task The_asks_are_tried_on_the_forecast_and_what_does_not_fit_says_why()
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);
        var page = await desk.Open("/Counter/DropOff");

        page = await page.Send("Work it out again",
            ("Input.Animals[0].State", "FieldDressed"), ("Input.Animals[0].Weight", "100"),
            ("Input.Order.Asks[0].ProductId", Id("Ring sausage")), ("Input.Order.Asks[0].Kind", "OwnLean"), ("Input.Order.Asks[0].Amount", "40"),
            ("Input.Order.Asks[1].ProductId", Id("Suet patties")), ("Input.Order.Asks[1].Kind", "OwnLean"), ("Input.Order.Asks[1].Amount", "20"));

        // 100 × 0.48 = 48 lb; 40 taken, 8 left for an ask of 20.
        page.Expect("Not all of it fits", "Suet patties: Asked for 20.00 lb; 8.00 lb of lean was left.", "Cured: Ring sausage.");
    }

    [Fact]
    public async Task What_fits_the_typical_yield_but_not_the_low_end_is_said_so()
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);
        var page = await desk.Open("/Counter/DropOff");

        page = await page.Send("Work it out again",
            ("Input.Animals[0].State", "FieldDressed"), ("Input.Animals[0].Weight", "100"),
            ("Input.Order.Asks[0].ProductId", Id("Suet patties")), ("Input.Order.Asks[0].Kind", "OwnLean"), ("Input.Order.Asks[0].Amount", "45"));

        // Typical 48.00 lb, low end 48 × 0.85 = 40.80 lb.
        page.Expect("Fits, but not at the low end", "Asked for 45.00 lb; 40.80 lb of lean was left.");
    }

    [Fact]
    public async Task The_price_runs_from_the_low_end_to_the_high()
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);
        var page = await desk.Open("/Counter/DropOff");

        page = await page.Send("Work it out again",
            ("Input.Animals[0].State", "FieldDressed"), ("Input.Animals[0].Weight", "100"),
            ("Input.Order.Asks[0].ProductId", Id("Ring sausage")), ("Input.Order.Asks[0].Kind", "Rest"));

        // Lean 40.80 and 55.20 lb; / 0.70 lean share = meat block 58.29 and 78.86; × 1.0025 with the cure = 58.44 and 79.06 lb green, no loss.
        // $120.00 + 58.44 × $4.00 = $353.76; $120.00 + 79.06 × $4.00 = $436.24.
        page.Expect("$353.76 to $436.24 before tax");
    }

    [Fact]
    public async Task Cuts_are_taken_off_by_published_muscle_shares_and_called_an_estimate()
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);
        var page = await desk.Open("/Counter/DropOff");

        page = await page.Send("Work it out again",
            ("Input.Animals[0].State", "FieldDressed"), ("Input.Animals[0].Weight", "100"), ("Input.Order.Style", "steaks"));

        // Saddle 15.5 and haunch 39.4 of 100.7 go to cuts: 48 × (100.7 − 54.9) / 100.7 = 21.8311… lb. Massey University 1985.
        page.Expect("about 21.8 lb", "an estimate");
    }

    [Theory]
    [InlineData("Bear", "FieldDressed", "no ratio to boneless meat is published")]
    [InlineData("Bear", "Whole", "do not reliably kill them in bear and wild boar")]
    [InlineData("WhiteTailDeer", "FieldDressed", "Untested is not negative")]
    public async Task What_is_not_published_and_what_is_dangerous_is_said(string species, string state, string words)
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);
        var page = await desk.Open("/Counter/DropOff");

        page = await page.Send("Work it out again", ("Input.Animals[0].Species", species), ("Input.Animals[0].State", state), ("Input.Animals[0].Weight", "150"));

        page.Expect(words);
    }

    [Fact]
    public async Task A_warm_animal_is_warned_about_with_the_source()
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);
        var page = await desk.Open("/Counter/DropOff");

        page = await page.Send("Work it out again", ("Input.Animals[0].Surface", "52"));

        // Deer hang at or under 40 °F: Michigan State University Extension.
        page.Expect("52.0 °F is above 40.0 °F", "Michigan State University Extension (3 to 5 days at or under 40 °F");
    }

    [Fact]
    public async Task The_live_panel_answers_with_itself_alone_and_saves_nothing()
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);
        var page = await desk.Open("/Counter/DropOff");
        page.Form("Take it in").Fill("Input.Animals[0].State", "FieldDressed");
        page.Form("Take it in").Fill("Input.Animals[0].Weight", "100");
        var before = shop.Jobs;
        var request = page.Form("Take it in").Submission(page.Button("Take it in"));
        request.RequestUri = new Uri(shop.Address, "/Counter/DropOff?handler=Live");
        request.Headers.Add("X-Desk-Live", "1");

        var panel = await desk.Ask(request);

        panel.Expect("48.0 lb boneless");
        Assert.Null(panel.Document.QuerySelector("form"));
        Assert.Equal(before, shop.Jobs);
    }

    private string Id(string product) => shop.ProductId(product).ToString(CultureInfo.InvariantCulture);
}
