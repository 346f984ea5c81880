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
    public async Task An_ingredient_is_added_by_its_name_and_half_a_line_is_asked_about()
    {
        var id = Sausage("Added to");
        using var desk = await shop.SignIn(StaffRole.Manager);
        var page = await (await desk.Open($"/Office/Products/Formula/{id}")).Press("Add an ingredient");

        page = await page.Send("Keep as version 2", ("Input.Lines[1].Amount", "0.3"));
        Assert.Equal(["Choose the ingredient. What is not on the list is added under Ingredients."], page.Problems);
        Assert.Equal([1], Versions(id).Select(version => version.Number));
        page = await page.Send("Keep as version 2", ("Input.Lines[1].Ingredient", $"{IdOf("Pepper")}"));

        page.Expect("Version 2 of Added to is what new orders are made by.");
        Assert.Equal(["Pink curing salt", "Pepper"], Versions(id)[^1].Ingredients.OrderBy(line => line.Position).Select(line => line.Name));
        Assert.Equal(IdOf("Pepper"), Versions(id)[^1].Ingredients.Single(line => line.Position == 1).IngredientId);
    }

    /// <summary>
    /// North Dakota State University Extension: 15 lb venison, 10 lb pork trimmings, 7 oz salt, 1 oz cure, 1 oz mustard seed, 3 oz pepper, 3 oz sugar, 1/2 oz
    /// marjoram; the cure at 6.25 % nitrite, the rest of it salt. On 400 oz of meat: 156.25 ppm, salt 7.9375 oz, 15.5 oz added.
    /// </summary>
    [Fact]
    public async Task The_summer_sausage_of_North_Dakota_State_University_shows_its_published_figures()
    {
        var id = Sausage("Venison summer sausage");
        using var desk = await shop.SignIn(StaffRole.Manager);
        var page = await desk.Open($"/Office/Products/Formula/{id}");
        (string Name, string Ounces)[] lines = [("Pink curing salt", "1"), ("Salt", "7"), ("Mustard seed", "1"), ("Pepper", "3"), ("Sugar", "3"), ("Marjoram", "0.5")];
        for (var i = 1; i < lines.Length; i++)
            page = await page.Press("Add an ingredient");

        page = await page.Send("Reckon",
        [
            ("Input.LeanShare", "60"), ("Input.LeanFat", "2.42"), ("Input.AddedFat", $"{IdOf("Pork trim")}"), ("Input.LossTypical", "15"), ("Input.LossHigh", "20"),
            .. lines.SelectMany((line, i) => new[]
            {
                ($"Input.Lines[{i}].Ingredient", $"{IdOf(line.Name)}"), ($"Input.Lines[{i}].Amount", line.Ounces), ($"Input.Lines[{i}].Basis", nameof(FormulaBasis.OuncesPer25Pounds)),
            }),
        ]);

        page.Expect("156.25 ppm", "Within the limit", "9 CFR 424.21(c)");
        page.Expect("1.98 % of the meat block"); // 7.9375 ÷ 400 = 1.984 %
        page.Expect("3.88 %", "103.88 lb"); // 15.5 ÷ 400 = 3.875 %
        // Fat: 60 % at 2.42 % and 40 % at 50 % are 21.452 % of the block; ÷ 1.03875 = 20.65 % of the mix; ÷ 0.85 = 24.30 % of what is left.
        page.Expect("20.65 %", "24.3 % finished");
        // Pork 40 % at $1.45, 15.5 oz of all else at 32 cents: 58 + 1.24 = 59.24 cents to 1.03875 lb; and ÷ 0.85 finished.
        page.Expect("$0.570 / lb", "$0.671 / lb finished");
        page.Expect("Allergens: none", "Pork: Pork trim");
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

    private int IdOf(string ingredient) => shop.Read(records => records.Ingredients.Single(one => one.Name == ingredient).Id);

    /// <summary>The ingredient of that name; the larder is stocked at the first asking.</summary>
    private static Ingredient Larder(RecordsContext records, string name)
    {
        if (!records.Ingredients.Any())
        {
            records.Ingredients.Add(new Ingredient(new IngredientFacts("Pork trim", IngredientKind.Meat, Proportion.Zero, Proportion.Zero)
            {
                IsPork = true,
                Fat = Proportion.FromPercent(50m),
                Cost = Money.FromCents(145),
            }));
            records.Ingredients.Add(new Ingredient(new IngredientFacts("Pink curing salt", IngredientKind.Cure, Proportion.FromPercent(6.25m), Proportion.Zero)
            {
                Salt = Proportion.FromPercent(93.75m),
                Cost = Money.FromCents(32),
            }));
            records.Ingredients.AddRange(new[] { "Salt", "Mustard seed", "Pepper", "Sugar", "Marjoram" }.Select(one => new Ingredient(new IngredientFacts(
                one, one == "Salt" ? IngredientKind.Salt : IngredientKind.Seasoning, Proportion.Zero, Proportion.Zero)
            {
                Salt = one == "Salt" ? Proportion.Whole : Proportion.Zero,
                Contains = one == "Mustard seed" ? Allergen.Mustard : Allergen.None,
                Cost = Money.FromCents(32),
            })));
            records.SaveChanges();
        }

        return records.Ingredients.Single(one => one.Name == name);
    }

    /// <summary>70 % lean with 4 oz of a 6.25 % cure to 100 lb.</summary>
    private int Sausage(string name) => int.Parse(
        shop.Write((records, act) =>
        {
            var product = new Product(name, ProcessKind.Smoked, cured: true);
            product.Reformulate(new FormulaVersion(
                act.Now, Proportion.FromPercent(70m), null, false, (Proportion.Zero, Proportion.Zero, Proportion.Zero), Weight.Zero, Weight.Zero,
                [new FormulaIngredient(0, Larder(records, "Pink curing salt"), FormulaBasis.OuncesPer100Pounds, 4m)]).WithAddedFat(Larder(records, "Pork trim")));
            records.Products.Add(product);
            records.SaveChanges();
            return Outcome.Done(product.Id);
        }).Result,
        System.Globalization.CultureInfo.InvariantCulture);
}
