using System.Globalization;
using Microsoft.Playwright;

namespace ProcessorDesk.Browser.Tests.Screens;

/// <summary>What the counter shows after a drop-off: number, tickets, papers.</summary>
internal sealed class TakenInScreen : DeskScreen
{
    private TakenInScreen(IPage page)
        : base(page)
    {
    }

    public int JobId => int.Parse(new Uri(Page.Url).Segments[^1], CultureInfo.InvariantCulture);

    public static async Task<TakenInScreen> On(IPage page)
    {
        await Shows(page, "is taken in");
        return new TakenInScreen(page);
    }

    public Task<string> Claim() => Page.Locator(".page-head .ticket").InnerTextAsync();

    public async Task<IReadOnlyList<string>> Tickets() => await Page.Locator("table .ticket").AllInnerTextsAsync();
}
