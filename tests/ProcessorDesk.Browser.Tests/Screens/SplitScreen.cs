using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace ProcessorDesk.Browser.Tests.Screens;

/// <summary>What the trim allows, ask by ask, and its cure.</summary>
internal sealed class SplitScreen : DeskScreen
{
    private SplitScreen(IPage page)
        : base(page)
    {
    }

    public static async Task<SplitScreen> Open(IPage page, int job)
    {
        await page.GotoAsync($"/Grind/Split/{job}");
        await Shows(page, "Split of job");
        return new SplitScreen(page);
    }

    /// <summary>Lean, added fat, meat block, green and finished of a product, as the table has them.</summary>
    public async Task<string[]> Figures(string product)
    {
        var row = Page.Locator("table.list tbody tr", new PageLocatorOptions { HasText = product });
        return [.. (await row.Locator("td.number").AllInnerTextsAsync()).Select(cell => OneLine(cell).Split(' ')[0])];
    }

    public async Task<string> Cure(string product) =>
        OneLine(await Page.Locator("section[aria-labelledby=cure] .panel", new PageLocatorOptions { HasText = product }).InnerTextAsync());

    public async Task<SplitScreen> Agree()
    {
        await Press("Agree this split");
        await Expect(Main).ToContainTextAsync("The split is agreed");
        return this;
    }
}
