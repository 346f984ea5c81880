using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace ProcessorDesk.Browser.Tests.Screens;

/// <summary>The boxes of one job.</summary>
internal sealed class FreezerScreen : DeskScreen
{
    private FreezerScreen(IPage page)
        : base(page)
    {
    }

    public static async Task<FreezerScreen> Open(IPage page, int job, string owner)
    {
        await page.GotoAsync($"/Freezer/Job/{job}");
        await Shows(page, owner);
        return new FreezerScreen(page);
    }

    /// <summary>One kind in one box.</summary>
    public async Task<FreezerScreen> Pack(string what, string packs, string gross, string tare, string net, string place, bool script)
    {
        await Page.Locator(".packs .field", new PageLocatorOptions { HasText = what }).Locator("input:not([type=hidden])").FillAsync(packs);
        await Type("Input.Tare", tare);
        await Type("Input.Gross", gross);
        await Type("Input.Place", place);
        if (!script)
            await Press("Show the net");
        await Expect(Page.Locator("#net")).ToContainTextAsync($"{net} lb");
        await Press("Pack the box");
        await Expect(Row(what)).ToContainTextAsync($"{net} lb");
        return this;
    }

    /// <summary>The ticket of the box that holds something.</summary>
    public Task<string> Ticket(string what) => Row(what).Locator(".ticket").First.InnerTextAsync();

    public async Task<byte[]> Label(string what, string stock)
    {
        var address = await Row(what).Locator("a[href*='/Freezer/Label/']", new LocatorLocatorOptions { HasText = stock }).First.GetAttributeAsync("href");
        var answer = await Page.Context.APIRequest.GetAsync(new Uri(new Uri(Page.Url), address).ToString());
        return await answer.BodyAsync();
    }

    public async Task Everything()
    {
        await Press("Everything is in boxes");
        await Expect(Page.Locator(".page-head")).ToContainTextAsync("All in boxes");
    }

    private ILocator Row(string what) => Page.Locator("ul.boxes > li", new PageLocatorOptions { HasText = what });
}
