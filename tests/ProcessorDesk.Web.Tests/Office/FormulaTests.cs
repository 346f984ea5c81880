using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Formulas;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Office;

/// <summary>156 ppm on the meat block is the published limit for nitrite in comminuted product (9 CFR 424.21(c)).</summary>
public sealed class FormulaTests(ShopUnderTest shop) : IClassFixture<ShopUnderTest>
{
    [Fact]
    public async Task A_formula_over_the_cure_limit_is_refused_with_the_source()
    {
        var id = Sausage("Over");
        using var desk = await shop.SignIn(StaffRole.Manager);

        // 8 oz to 100 lb is 0.5 %; 0.5 % × 6.25 % = 312.5 ppm, shown whole so far from the limit.
        var page = await (await desk.Open($"/Office/Products/Formula/{id}")).Send("Keep as version 2", ("Input.Lines[0].Amount", "8"));

        Assert.NotEmpty(page.Problems);
        Assert.Contains(page.Problems, words => words.Contains("313 ppm", StringComparison.Ordinal) && words.Contains("9 CFR 424.21", StringComparison.Ordinal));
        Assert.Equal("8", page.Form("Keep as version 2").Value("Input.Lines[0].Amount"));
        Assert.Equal([1], Versions(id).Select(version => version.Number));
    }

    [Fact]
    public async Task A_blank_strength_is_refused_and_zero_is_taken()
    {
        var id = Sausage("Blank");
        using var desk = await shop.SignIn(StaffRole.Manager);
        var page = await (await desk.Open($"/Office/Products/Formula/{id}")).Press("Add an ingredient");

        page = await page.Send("Keep as version 2", ("Input.Lines[1].Name", "Pepper"), ("Input.Lines[1].Amount", "0.3"), ("Input.Lines[1].Nitrate", "0"));
        Assert.Single(page.Problems);
        Assert.NotNull(page.Document.QuerySelector("#Input_Lines_1__Nitrite-problem"));
        Assert.Equal([1], Versions(id).Select(version => version.Number));
        page = await page.Send("Keep as version 2", ("Input.Lines[1].Nitrite", "0"));

        page.Expect("Version 2 of Blank is what new orders are made by.");
        Assert.Equal(["Pink curing salt", "Pepper"], Versions(id)[^1].Ingredients.OrderBy(line => line.Position).Select(line => line.Name));
    }

    [Fact]
    public async Task A_change_is_a_new_version_and_the_old_one_stays()
    {
        var id = Sausage("Twice");
        using var desk = await shop.SignIn(StaffRole.Manager);
        var page = await desk.Open($"/Office/Products/Formula/{id}");

        await page.Send("Keep as version 2", ("Input.LeanShare", "80"), ("Input.LossTypical", "12"), ("Input.LossHigh", "15"));
        await page.Press("Keep as version 2");

        Assert.Equal(
            [(1, Proportion.FromPercent(70m), Proportion.FromPercent(0m)), (2, Proportion.FromPercent(80m), Proportion.FromPercent(12m))],
            Versions(id).Select(version => (version.Number, version.LeanShare, version.LossTypical)));
    }

    [Fact]
    public async Task The_rest_before_stuffing_is_typed_in_hours_and_kept_in_minutes()
    {
        var id = Sausage("Rested");
        using var desk = await shop.SignIn(StaffRole.Manager);
        var page = await desk.Open($"/Office/Products/Formula/{id}");

        var refused = await page.Send("Keep as version 2", ("Input.RestHours", "overnight"));
        Assert.Contains("Type the hours, for example 4 or 1.5; empty where it need not rest.", refused.Problems);
        var kept = await refused.Send("Keep as version 2", ("Input.RestHours", "1.5"));

        kept.Expect("Rests 1 h 30 min before it is stuffed.");
        Assert.Equal([0, 90], Versions(id).Select(version => version.RestMinutes));
        Assert.Equal("1.5", (await desk.Open($"/Office/Products/Formula/{id}")).Form("Keep as version 3").Value("Input.RestHours"));
    }

    [Fact]
    public async Task Two_who_change_one_formula_are_told_of_each_other()
    {
        var id = Sausage("Stale");
        using var desk = await shop.SignIn(StaffRole.Manager);
        var (first, second) = (await desk.Open($"/Office/Products/Formula/{id}"), await desk.Open($"/Office/Products/Formula/{id}"));
        await first.Send("Keep as version 2", ("Input.LeanShare", "80"));

        var page = await second.Send("Keep as version 2", ("Input.LeanShare", "85"));

        page.Expect("Both, side by side", "80", "85");
        Assert.Equal([1, 2], Versions(id).Select(version => version.Number));
    }

    private List<FormulaVersion> Versions(int id) => shop.Read(records =>
        records.FormulaVersions.AsNoTracking().Include(version => version.Ingredients).Where(version => version.Product.Id == id).OrderBy(version => version.Number).ToList());

    /// <summary>70 % lean with 4 oz of a 6.25 % cure to 100 lb.</summary>
    private int Sausage(string name) => int.Parse(
        shop.Write((records, act) =>
        {
            var product = new Product(name, ProcessKind.Smoked, cured: true);
            product.Reformulate(new FormulaVersion(
                act.Now, Proportion.FromPercent(70m), "Pork trim", true, (Proportion.Zero, Proportion.Zero, Proportion.Zero), Weight.Zero, Weight.Zero,
                [new FormulaIngredient(0, "Pink curing salt", FormulaBasis.OuncesPer100Pounds, 4m, Proportion.FromPercent(6.25m), Proportion.Zero, false)]));
            records.Products.Add(product);
            records.SaveChanges();
            return Outcome.Done(product.Id);
        }).Result,
        System.Globalization.CultureInfo.InvariantCulture);
}
