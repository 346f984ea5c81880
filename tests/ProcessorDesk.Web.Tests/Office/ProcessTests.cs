using ProcessorDesk.Records;
using ProcessorDesk.Trade.Process;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Office;

public sealed class ProcessTests(ShopUnderTest shop) : IClassFixture<ShopUnderTest>
{
    [Fact]
    public async Task The_shops_figures_are_saved_and_stand_in_the_form()
    {
        using var desk = await shop.SignIn(StaffRole.Manager);

        var page = await (await desk.Open("/Office/Process")).Send("Save the shop's figures", ("Input.CookingGap", "10"), ("Input.ChillingGap", "45"), ("Input.Accuracy", "0.5"));

        page.Expect("The shop's figures are saved.");
        Assert.Equal(("10", "45", "0.5"), (Typed(page, "CookingGap"), Typed(page, "ChillingGap"), Typed(page, "Accuracy")));
        Assert.Equal((10, 45), shop.Read(records => (records.Shop.Single().CookingGapMinutes, records.Shop.Single().ChillingGapMinutes)));
    }

    /// <summary>15 minutes between cooking readings, 60 between chilling readings: the shop may be stricter, never looser.</summary>
    [Fact]
    public async Task A_gap_longer_than_the_set_most_is_refused_and_stays_typed()
    {
        using var desk = await shop.SignIn(StaffRole.Manager);

        var page = await (await desk.Open("/Office/Process")).Send("Save the shop's figures", ("Input.CookingGap", "16"), ("Input.Accuracy", "much"));
        Assert.Contains("Type degrees Fahrenheit, for example 0.5; 0 where nothing is added.", page.Problems);
        var looser = await page.Send("Save the shop's figures", ("Input.Accuracy", "0"));

        Assert.NotEmpty(looser.Problems);
        Assert.Equal("16", Typed(looser, "CookingGap"));
        Assert.InRange(shop.Read(records => records.Shop.Single().CookingGapMinutes), 1, 15);
    }

    [Fact]
    public async Task Two_managers_at_the_shops_figures_see_both_and_choose()
    {
        using var one = await shop.SignIn(StaffRole.Manager);
        using var two = await shop.SignIn(StaffRole.Manager);
        var (first, second) = (await one.Open("/Office/Process"), await two.Open("/Office/Process"));
        await first.Send("Save the shop's figures", ("Input.ChillingGap", "50"));

        var late = await second.Send("Save the shop's figures", ("Input.ChillingGap", "40"));

        late.Expect("Both, side by side", "Longest gap between chilling readings");
        var row = late.Document.QuerySelectorAll("tr").Single(line => line.TextContent.Contains("Longest gap between chilling", StringComparison.Ordinal));
        Assert.Equal(["50", "40"], row.QuerySelectorAll("td").Select(cell => cell.TextContent));
        Assert.Equal(50, shop.Read(records => records.Shop.Single().ChillingGapMinutes));
        (await late.Press("Save the shop's figures")).Expect("The shop's figures are saved.");
        Assert.Equal(40, shop.Read(records => records.Shop.Single().ChillingGapMinutes));
    }

    [Fact]
    public async Task A_products_five_log_table_needs_its_support_in_writing()
    {
        using var desk = await shop.SignIn(StaffRole.Manager);
        var id = Product("Ring for the table");
        var page = await desk.Open($"/Office/Process/Product/{id}");

        var refused = await page.Send("Save", ("Input.Table", nameof(LethalityKind.Meat5Log)));
        Assert.Contains(refused.Problems, problem => problem.StartsWith("5-log on product that must be kept cold needs written support", StringComparison.Ordinal));
        (await refused.Send("Save", ("Input.Support", "our study of 3 May 2026"), ("Input.DryingLoss", "20"))).Expect("Ring for the table: saved.", "our study of 3 May 2026", "at least 20 %");

        var kept = shop.Read(records => records.Products.Single(product => product.Id == id));
        Assert.Equal((LethalityKind.Meat5Log, "our study of 3 May 2026"), (kept.Cooking, kept.CookingSupport));
    }

    [Fact]
    public async Task Two_managers_at_one_product_see_both_and_choose()
    {
        using var one = await shop.SignIn(StaffRole.Manager);
        using var two = await shop.SignIn(StaffRole.Manager);
        var id = Product("Ring for two");
        var (first, second) = (await one.Open($"/Office/Process/Product/{id}"), await two.Open($"/Office/Process/Product/{id}"));
        await first.Send("Save", ("Input.DryingLoss", "25"));

        var late = await second.Send("Save", ("Input.DryingLoss", "30"));

        late.Expect("Both, side by side", "Loss in drying");
        Assert.Equal("25 %", shop.Read(records => records.Products.Single(product => product.Id == id).DryingLoss!.Value.Print()));
        await late.Press("Save");
        Assert.Equal("30 %", shop.Read(records => records.Products.Single(product => product.Id == id).DryingLoss!.Value.Print()));
    }

    private static string Typed(Screen page, string field) => page.Form("Save the shop's figures").Value("Input." + field);

    private int Product(string name) => int.Parse(shop.Write((records, _) =>
    {
        var product = new Product(name, ProcessKind.Smoked, cured: true);
        records.Products.Add(product);
        records.SaveChanges();
        return Outcome.Done(product.Id);
    }).Result, System.Globalization.CultureInfo.InvariantCulture);
}
