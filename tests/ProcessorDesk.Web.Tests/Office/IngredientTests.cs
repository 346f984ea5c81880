using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Office;

/// <summary>The ingredients' pages: labels are copied, zero is an answer and blank is not.</summary>
public sealed class IngredientTests(ShopUnderTest shop) : IClassFixture<ShopUnderTest>
{
    [Fact]
    public async Task A_blank_strength_is_refused_and_zero_is_taken()
    {
        using var desk = await shop.SignIn(StaffRole.Manager);
        var page = await desk.Open("/Office/Ingredients/Edit");

        page = await page.Send("Save", ("Input.Name", "Pepper"), ("Input.Kind", "Seasoning"), ("Input.Nitrate", "0"));
        Assert.Single(page.Problems);
        Assert.NotNull(page.Document.QuerySelector("#Input_Nitrite-problem"));
        page = await page.Send("Save", ("Input.Nitrite", "0"));

        page.Expect("Pepper is added.");
        Assert.True(Kept("Pepper").Nitrite.IsZero);
    }

    [Fact]
    public async Task A_cure_has_no_strength_by_default_and_zero_is_none()
    {
        using var desk = await shop.SignIn(StaffRole.Manager);
        var page = await desk.Open("/Office/Ingredients/Edit");
        Assert.Equal("", page.Form("Save").Value("Input.Nitrite"));

        page = await page.Send("Save", ("Input.Name", "Cure"), ("Input.Kind", "Cure"), ("Input.Nitrite", "0"), ("Input.Nitrate", "0"));
        Assert.Equal(["A cure states its nitrite or its nitrate. Copy it from the label."], page.Problems);
        await page.Send("Save", ("Input.Nitrite", "6.25"), ("Input.Salt", "93.75"));

        Assert.Equal((Proportion.FromPercent(6.25m), Proportion.FromPercent(93.75m)), (Kept("Cure").Nitrite, Kept("Cure").Salt));
    }

    /// <summary>USDA National Nutrient Database 10004: pork backfat, raw, holds 88.69 % fat.</summary>
    [Fact]
    public async Task A_published_fat_content_is_chosen_and_its_source_is_kept()
    {
        using var desk = await shop.SignIn(StaffRole.Manager);

        await (await desk.Open("/Office/Ingredients/Edit")).Send("Save",
            ("Input.Name", "Backfat"), ("Input.Kind", "Meat"), ("Input.Nitrite", "0"), ("Input.Nitrate", "0"), ("Input.FatSource", "porkBackfat"), ("Input.IsPork", "true"), ("Input.Cost", "1.10"), ("Input.Least", "20"));

        Assert.Equal((Proportion.FromPercent(88.69m), "porkBackfat", true), (Kept("Backfat").Fat, Kept("Backfat").FatSource, Kept("Backfat").IsPork));
        (await desk.Open("/Office/Ingredients")).Expect("Backfat", "pork", "$1.10 / lb");
    }

    [Fact]
    public async Task Mustard_is_asked_for_where_the_shop_says_so()
    {
        using var desk = await shop.SignIn(StaffRole.Manager);
        Assert.DoesNotContain("Mustard", (await desk.Open("/Office/Ingredients/Edit")).Text, StringComparison.Ordinal);

        shop.Write((records, _) =>
        {
            records.Shop.Single().SetMoreAllergens(true);
            return Outcome.Done();
        });

        (await desk.Open("/Office/Ingredients/Edit")).Expect("Milk", "Sesame", "Mustard", "Celery");
    }

    [Fact]
    public async Task Two_who_change_one_ingredient_are_told_of_each_other()
    {
        var id = int.Parse(shop.Write((records, _) =>
        {
            var one = new Ingredient(new IngredientFacts("Sage", IngredientKind.Seasoning, Proportion.Zero, Proportion.Zero));
            records.Ingredients.Add(one);
            records.SaveChanges();
            return Outcome.Done(one.Id);
        }).Result, System.Globalization.CultureInfo.InvariantCulture);
        using var desk = await shop.SignIn(StaffRole.Manager);
        var (first, second) = (await desk.Open($"/Office/Ingredients/Edit/{id}"), await desk.Open($"/Office/Ingredients/Edit/{id}"));
        await first.Send("Save", ("Input.Cost", "9.40"));

        (await second.Send("Save", ("Input.Cost", "8.00"))).Expect("Both, side by side", "9.40", "8.00");
    }

    private Ingredient Kept(string name) => shop.Read(records => records.Ingredients.AsNoTracking().Single(one => one.Name == name));
}
