using System.Net;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Office;

/// <summary>The shop's day is Friday 27 November 2026.</summary>
public sealed class PriceListTests(ShopUnderTest shop) : IClassFixture<ShopUnderTest>
{
    [Fact]
    public async Task A_new_list_is_kept_with_its_rows_and_blank_rows_are_not()
    {
        using var desk = await shop.SignIn(StaffRole.Manager);
        var page = await (await desk.Open("/Office/Prices")).Follow("Make a new list");
        page = await page.Send("Add a row: added fat", ("Input.Name", "Winter"), ("Input.Lines[0].Species", "Elk"), ("Input.Lines[0].Amount", "$1.10 / lb"));
        page = await page.Press("Add a row: extra");
        page = await page.Press("Add a row: deposit");

        page = await page.Send(
            "Save as a new list",
            ("Input.StartsOn", "2026-12-01"), ("Input.Lines[0].Basis", "HangingPound"), ("Input.Lines[0].State", "Skinned"), ("Input.Lines[0].Taxed", "true"),
            ("Input.Lines[2].Text", "Pork trim"), ("Input.Lines[2].Amount", "1.95"), ("Input.Lines[4].Amount", "50"));

        Assert.Equal("/Office/Prices", page.Path);
        page.Expect("Winter", "Tue 1 Dec", "Starts later", "None yet: can be changed");
        var list = Kept("Winter").Single();
        Assert.Equal(new DateOnly(2026, 12, 1), list.StartsOn);
        Assert.Equal(
            [
                (PriceFor.Animal, "Cutting", ChargeBasis.HangingPound, 110, true, Species.Elk, ArrivalState.Skinned),
                (PriceFor.AddedFat, "Pork trim", ChargeBasis.AddedFatPound, 195, false, null, null),
                (PriceFor.Deposit, "Deposit", ChargeBasis.Each, 5_000, false, null, (ArrivalState?)null),
            ],
            list.Prices.OrderBy(price => price.Id).Select(price => (price.For, price.Text, price.Basis, price.Cents, price.Taxed, price.Species, price.ArrivalState)));
    }

    [Fact]
    public async Task A_list_not_used_yet_is_changed_and_a_row_taken_out()
    {
        var id = Make("Spring", new(2027, 3, 1), Cutting(9_500), Extra("Caping", 4_000));
        using var desk = await shop.SignIn(StaffRole.Manager);
        var page = await (await desk.Open($"/Office/PriceList/{id}")).Send("Take price 1 out", ("Input.Name", "Spring 2027"));
        Assert.Equal("Caping", page.Form("Save").Value("Input.Lines[0].Text"));

        page = await page.Send("Save", ("Input.Lines[0].Amount", "45.50"));

        page.Expect("Spring 2027 is saved");
        Assert.Equal([("Caping", 4_550)], Kept("Spring 2027").Single().Prices.Select(price => (price.Text, price.Cents)));
    }

    [Fact]
    public async Task What_can_not_be_read_stays_typed_with_words_beside_it()
    {
        using var desk = await shop.SignIn(StaffRole.Manager);
        var page = await (await desk.Open("/Office/PriceList")).Press("Add a row: extra");

        page = await page.Send(
            "Save as a new list",
            ("Input.Name", ""), ("Input.StartsOn", ""), ("Input.Lines[0].Amount", "ninety"), ("Input.Lines[1].Amount", "3.999"), ("Input.Lines[2].Amount", "5"));

        page.Expect("does not read as money", "whole cents");
        Assert.Equal(
            ["Name the list, for example Autumn 2026.", "Choose the day from which these prices are asked.", "Choose the species.", "Choose the product.", "Type what the invoice calls it."],
            page.Problems.Where(words => !words.Contains("money", StringComparison.Ordinal) && !words.Contains("cents", StringComparison.Ordinal)));
        var form = page.Form("Save as a new list");
        Assert.Equal(["", "ninety", "3.999", "5"], new[] { "Input.StartsOn", "Input.Lines[0].Amount", "Input.Lines[1].Amount", "Input.Lines[2].Amount" }.Select(form.Value));
        Assert.Equal("Input_Lines_0__Amount-problem", page.Document.QuerySelector("[name='Input.Lines[0].Amount']")!.GetAttribute("aria-describedby")!.Split(' ')[0]);
        Assert.Empty(Kept(""));
    }

    [Fact]
    public async Task The_same_charge_twice_and_an_empty_list_are_refused()
    {
        using var desk = await shop.SignIn(StaffRole.Manager);
        var page = await desk.Open("/Office/PriceList");
        var empty = await page.Send("Save as a new list", ("Input.Name", "Nothing"));
        Assert.Equal(["There is no price in the list. Fill in one at least."], empty.Problems);

        page = await empty.Press("Add a row: animal");
        page = await page.Send(
            "Save as a new list",
            ("Input.Lines[0].Species", "Elk"), ("Input.Lines[0].Amount", "95"), ("Input.Lines[2].Species", "Elk"), ("Input.Lines[2].Amount", "96"));

        Assert.Equal(["This stands in the list once already. Take one of the two out."], page.Problems);
        Assert.Empty(Kept("Nothing"));
    }

    [Fact]
    public async Task A_second_press_makes_one_list()
    {
        using var desk = await shop.SignIn(StaffRole.Manager);
        var page = await desk.Open("/Office/PriceList");
        await page.Send("Save as a new list", ("Input.Name", "Once"), ("Input.StartsOn", "2027-06-01"), ("Input.Lines[0].Species", "Elk"), ("Input.Lines[0].Amount", "95"));

        var again = await page.Press("Save as a new list");

        Assert.Equal("/Office/Prices", again.Path);
        Assert.Single(Kept("Once"));
    }

    [Fact]
    public async Task A_list_that_was_used_is_read_and_copied_to_one_that_starts_later()
    {
        var id = Make("Opening", new(2026, 11, 20), Cutting(9_500), Extra("Caping", 4_000));
        Use(id);
        using var desk = await shop.SignIn(StaffRole.Manager);
        var page = await desk.Open($"/Office/PriceList/{id}");
        page.Expect("Opening", "$95.00 each", "$40.00 each", "Used since Fri 27 Nov", "stays as it is");
        Assert.Empty(page.Document.QuerySelectorAll("main input[name^='Input']"));

        page = await page.Follow("Copy to a new list");
        Assert.Equal("2026-11-28", page.Form("Save as a new list").Value("Input.StartsOn"));
        page = await page.Send("Save as a new list", ("Input.Name", "Dearer"), ("Input.Lines[0].Amount", "99"));

        page.Expect("Dearer is saved. Its prices are asked from Sat 28 Nov.");
        Assert.Equal([9_900, 4_000], Kept("Dearer").Single().Prices.OrderBy(price => price.Id).Select(price => price.Cents));
        Assert.Equal([9_500, 4_000], Kept("Opening").Single().Prices.OrderBy(price => price.Id).Select(price => price.Cents));
    }

    [Fact]
    public async Task A_list_that_would_never_be_asked_is_refused()
    {
        Use(Make("Already used", new(2026, 11, 26), Cutting(9_500)));
        using var desk = await shop.SignIn(StaffRole.Manager);

        var page = await (await desk.Open("/Office/PriceList")).Send(
            "Save as a new list", ("Input.Name", "Too early"), ("Input.StartsOn", "2026-11-01"), ("Input.Lines[0].Species", "Elk"), ("Input.Lines[0].Amount", "95"));

        Assert.Contains("Already used, which starts Thu 26 Nov", Assert.Single(page.Problems), StringComparison.Ordinal);
        Assert.Equal("Too early", page.Form("Save as a new list").Value("Input.Name"));
        Assert.Empty(Kept("Too early"));
    }

    [Fact]
    public async Task What_was_typed_into_a_list_used_meanwhile_can_be_saved_as_a_new_one()
    {
        var id = Make("Meanwhile", new(2026, 11, 24), Cutting(9_500));
        using var desk = await shop.SignIn(StaffRole.Manager);
        var page = await desk.Open($"/Office/PriceList/{id}");
        Use(id);

        page = await page.Send("Save", ("Input.Name", "Meanwhile, dearer"), ("Input.Lines[0].Amount", "105"), ("Input.StartsOn", "2026-12-24"));
        page.Expect("Jobs were taken at Meanwhile, so it stays as it is");
        Assert.Equal("105", page.Form("Save as a new list").Value("Input.Lines[0].Amount"));
        page = await page.Press("Save as a new list");

        page.Expect("Meanwhile, dearer is saved");
        Assert.Equal(9_500, Kept("Meanwhile").Single().Prices.Single().Cents);
        Assert.Equal(10_500, Kept("Meanwhile, dearer").Single().Prices.Single().Cents);
    }

    [Fact]
    public async Task A_list_saved_meanwhile_is_shown_beside_what_is_typed()
    {
        var id = Make("Both", new(2027, 9, 1), Cutting(9_500));
        using var desk = await shop.SignIn(StaffRole.Manager);
        var (first, second) = (await desk.Open($"/Office/PriceList/{id}"), await desk.Open($"/Office/PriceList/{id}"));
        await first.Send("Save", ("Input.Lines[0].Amount", "97"));

        var page = await second.Send("Save", ("Input.Lines[0].Amount", "98"));

        page.Expect("Both, side by side", "97.00", "98");
        Assert.Equal(9_700, Kept("Both").Single().Prices.Single().Cents);
        await page.Press("Save");
        Assert.Equal(9_800, Kept("Both").Single().Prices.Single().Cents);
    }

    [Fact]
    public async Task Only_the_manager_sets_prices_and_a_list_that_is_not_there_is_not_found()
    {
        using var clerk = await shop.SignIn(StaffRole.Clerk);
        using var manager = await shop.SignIn(StaffRole.Manager);

        Assert.Equal(HttpStatusCode.Forbidden, (await clerk.Open("/Office/Prices")).Status);
        Assert.Equal(HttpStatusCode.Forbidden, (await clerk.Open("/Office/PriceList")).Status);
        Assert.Equal(HttpStatusCode.NotFound, (await manager.Open("/Office/PriceList/999999")).Status);
        Assert.Equal(HttpStatusCode.NotFound, (await manager.Open("/Office/PriceList?from=999999")).Status);
    }

    private static Price Cutting(int cents) => new(PriceFor.Animal, "Cutting", ChargeBasis.Each, cents, taxed: false, Species.WhiteTailDeer);

    private static Price Extra(string text, int cents) => new(PriceFor.Extra, text, ChargeBasis.Each, cents, taxed: false);

    private int Make(string name, DateOnly startsOn, params Price[] prices) => int.Parse(
        shop.Write((records, _) =>
        {
            var list = new PriceList(name, startsOn, prices);
            records.PriceLists.Add(list);
            records.SaveChanges();
            return Outcome.Done(list.Id);
        }).Result,
        System.Globalization.CultureInfo.InvariantCulture);

    private void Use(int id) => shop.Write((records, act) =>
    {
        records.PriceLists.Single(list => list.Id == id).Use(act.Now);
        return Outcome.Done();
    });

    private List<PriceList> Kept(string name) =>
        shop.Read(records => records.PriceLists.AsNoTracking().Include(list => list.Prices).Where(list => list.Name == name).ToList());
}
