using System.Net;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Tests.Find;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Today;

/// <summary>What to do next, by what is in the shop.</summary>
public sealed class TodayTests(BusyShop shop) : IClassFixture<BusyShop>
{
    private async Task<Screen> Today(StaffRole role)
    {
        using var desk = await shop.SignIn(role);
        return await desk.Open("/");
    }

    [Fact]
    public async Task The_root_leads_to_today() => Assert.Equal("/Today", (await Today(StaffRole.Cutter)).Path);

    [Fact]
    public async Task Every_kind_of_work_stands_with_its_figure()
    {
        var page = await Today(StaffRole.Manager);

        Assert.Equal("1 on hold", Section(page, "holds"));
        Assert.Equal("1 warm or hung too long", Section(page, "cooler"));
        Assert.Equal("2 to cut, these first", Section(page, "cut"));
        Assert.Equal("1 with trim to split", Section(page, "split"));
        Assert.Equal("1 made, to be put in boxes", Section(page, "box"));
        Assert.Equal("1 with details to fill in", Section(page, "details"));
    }

    [Fact]
    public async Task A_hold_says_its_reason_in_words() =>
        (await Today(StaffRole.Kitchen)).Expect("On hold: waiting for the disease test", "Hugo Held");

    [Fact]
    public async Task What_hung_longest_is_cut_first_and_what_is_held_is_not_offered()
    {
        var cut = (await Today(StaffRole.Cutter)).Document.QuerySelector("#cut")!.ParentElement!.QuerySelectorAll("li a").Select(link => link.TextContent).ToList();

        Assert.Equal(2, cut.Count);
        Assert.Contains("Hanna Hung", cut[0], StringComparison.Ordinal);
        Assert.Contains("Freya Fresh", cut[1], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(StaffRole.Clerk)]
    [InlineData(StaffRole.Cutter)]
    [InlineData(StaffRole.Kitchen)]
    [InlineData(StaffRole.Manager)]
    public async Task Every_link_opens_for_the_role_that_is_shown_it(StaffRole role)
    {
        using var desk = await shop.SignIn(role);
        var page = await desk.Open("/Today");
        var links = page.Document.QuerySelectorAll("main a").Select(link => link.GetAttribute("href")!).Distinct().ToList();

        Assert.NotEmpty(links);
        foreach (var link in links)
            Assert.True((await desk.Open(link)).Status == HttpStatusCode.OK, $"{role}: {link}");
    }

    private static string Section(Screen page, string id) =>
        string.Join(' ', page.Document.GetElementById(id)!.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}

/// <summary>A shop with nothing in it yet.</summary>
public sealed class EmptyTodayTests(ShopUnderTest shop) : IClassFixture<ShopUnderTest>
{
    [Fact]
    public async Task An_empty_shop_says_where_to_begin()
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);

        (await desk.Open("/Today")).Expect("Nothing is in the shop", "Take in a drop-off");
    }
}
