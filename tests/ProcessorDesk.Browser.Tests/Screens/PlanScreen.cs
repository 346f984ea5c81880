using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace ProcessorDesk.Browser.Tests.Screens;

/// <summary>The plan of the day: its batches in their order, what stays out, what a move by hand costs.</summary>
internal sealed class PlanScreen : DeskScreen
{
    private PlanScreen(IPage page)
        : base(page)
    {
    }

    /// <summary>From the kitchen's own page, by its link.</summary>
    public static async Task<PlanScreen> Open(IPage page)
    {
        var kitchen = await KitchenScreen.Open(page);
        await kitchen.Follow("Plan the day");
        await Shows(page, "Plan of the day");
        return new PlanScreen(page);
    }

    /// <summary>"Smoked rings, pooled", batch by batch.</summary>
    public async Task<IReadOnlyList<string>> Batches() => [.. (await Page.Locator("table.loads > caption").AllInnerTextsAsync()).Select(OneLine)];

    /// <summary>Whose meat each load of a batch is of.</summary>
    public async Task<IReadOnlyList<string[]>> Loads(string batch) => await Rows(Page.Locator("table.loads", new PageLocatorOptions { Has = Page.Locator("caption", new PageLocatorOptions { HasText = batch }) }));

    /// <summary>Whose meat, product, green weight and reason of all that is not made today.</summary>
    public async Task<IReadOnlyList<string[]>> NotToday() => await Rows(Page.Locator("table", new PageLocatorOptions { HasText = "Not today" }));

    /// <summary>Moves something, found by the beginning of its words, to a place found so.</summary>
    public async Task Move(string what, string where)
    {
        if (await Field("Allotment").IsHiddenAsync())
            await Page.Locator("summary", new PageLocatorOptions { HasText = "Move something by hand" }).ClickAsync();
        await PickStarting("Allotment", what);
        await PickStarting("To", where);
        await Press("Move it");
        await Expect(Page.Locator("#changed")).ToContainTextAsync("What the change costs");
    }

    public async Task<string> Costs() => await Words("section[aria-labelledby=changed]");

    public async Task BackToTheProposed()
    {
        await Follow("Back to the plan as proposed");
        await Shows(Page, "Plan of the day");
        Assert.Equal(0, await Page.Locator("#changed").CountAsync());
    }

    public async Task Take()
    {
        await Press("Plan these");
        await Expect(Main).ToContainTextAsync("batches are planned");
    }

    private async Task PickStarting(string name, string words)
    {
        var label = (await Field(name).Locator("option").AllTextContentsAsync()).Single(option => option.StartsWith(words, StringComparison.Ordinal));
        await Pick(name, label);
    }
}
