using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Office;

public sealed class SettingsTests(ShopUnderTest shop) : IClassFixture<ShopUnderTest>
{
    [Fact]
    public async Task The_tag_rule_is_saved()
    {
        using var desk = await shop.SignIn(StaffRole.Manager);

        var page = await (await desk.Open("/Office/Shop")).Send("Save", ("Input.TagRule", "Refuse"));

        page.Expect("The shop's settings are saved.");
        Assert.Equal("Refuse", page.Form("Save").Value("Input.TagRule"));
        Assert.Equal(TagRule.Refuse, shop.Read(records => records.Shop.Single().TagRule));
    }

    [Fact]
    public async Task A_bench_scale_in_kilograms_is_refused_and_stays_typed()
    {
        using var desk = await shop.SignIn(StaffRole.Manager);

        var page = await (await desk.Open("/Office/Shop")).Send("Save", ("Input.BenchDivision", "5 g"));

        Assert.Contains("weighs in pounds", Assert.Single(page.Problems), StringComparison.Ordinal);
        Assert.Equal("5 g", page.Form("Save").Value("Input.BenchDivision"));
    }

    [Fact]
    public async Task The_last_manager_is_neither_retired_nor_given_another_role()
    {
        using var desk = await shop.SignIn(StaffRole.Manager);
        var id = shop.StaffOf(StaffRole.Manager);
        var page = await desk.Open($"/Office/Staff/Edit/{id}");

        var retired = await page.Press("Retire");
        var demoted = await page.Send("Save", ("Input.Role", "Cutter"));

        Assert.Contains("last manager", Assert.Single(retired.Problems), StringComparison.Ordinal);
        Assert.Contains("last manager", Assert.Single(demoted.Problems), StringComparison.Ordinal);
        var kept = shop.Read(records => records.Staff.Single(staff => staff.Id == id));
        Assert.Equal((StaffRole.Manager, null), (kept.Role, kept.RetiredAt));
    }

    [Fact]
    public async Task A_lugs_number_that_is_taken_is_said_in_words()
    {
        using var desk = await shop.SignIn(StaffRole.Manager);
        var page = await desk.Open("/Office/Lugs");
        page = await page.Send("Add it", ("Input.Number", "41"), ("Input.Tare", "3.10"));
        page.Expect("Lug 41 is added with a tare of 3.10 lb.");

        page = await page.Send("Add it", ("Input.Number", "41"), ("Input.Tare", "2.95"));

        Assert.Equal(["There is a lug 41 already. Give this one another number."], page.Problems);
        Assert.Equal("2.95", page.Form("Add it").Value("Input.Tare"));
        Assert.Equal(Weight.FromPounds(3.10m), shop.Read(records => records.Lugs.Single(lug => lug.Number == 41).Tare));
    }

    [Fact]
    public async Task A_hold_rule_is_tightened_and_set_back_and_what_is_built_in_stays()
    {
        using var desk = await shop.SignIn(StaffRole.Manager);
        var loose = shop.Read(records => records.HoldRules.First(rule => !rule.BuiltIn && !rule.Stops));
        var builtIn = shop.Read(records => records.HoldRules.Count(rule => rule.BuiltIn && rule.Stops));
        bool Stops() => shop.Read(records => records.HoldRules.Single(rule => rule.Reason == loose.Reason && rule.Act == loose.Act).Stops);
        var page = await desk.Open("/Office/Holds");
        page.Document.QuerySelectorAll<IHtmlInputElement>("input[name=Stops]").Single(box => box.Value == $"{(int)loose.Reason}.{(int)loose.Act}").IsChecked = true;

        page = await page.Press("Save");
        Assert.True(Stops());
        await page.Press("Set all back to what is built in");

        Assert.False(Stops());
        Assert.True(builtIn > 0);
        Assert.Equal(builtIn, shop.Read(records => records.HoldRules.Count(rule => rule.BuiltIn && rule.Stops)));
    }
}
