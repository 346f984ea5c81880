using System.Globalization;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace ProcessorDesk.Browser.Tests.Screens;

/// <summary>Money and meat leave here.</summary>
internal sealed class PickupScreen : DeskScreen
{
    private PickupScreen(IPage page)
        : base(page)
    {
    }

    public static async Task<PickupScreen> Open(IPage page, int job, string owner)
    {
        await page.GotoAsync($"/Pickup/Job/{job}");
        await Shows(page, owner);
        return new PickupScreen(page);
    }

    public Task<IReadOnlyList<string[]>> Charges() => Rows(Page.Locator("section[aria-labelledby=charges] table"));

    /// <summary>Subtotal, tax, this invoice, what was paid ahead or owed before, what is to pay then.</summary>
    public async Task<IReadOnlyList<string>> Sums() =>
        [.. (await Page.Locator("section[aria-labelledby=charges] dl.figures dd").AllInnerTextsAsync()).Select(OneLine)];

    public async Task<PickupScreen> Issue()
    {
        await Press("Issue the invoice");
        await Expect(Main).ToContainTextAsync("The invoice is issued");
        return this;
    }

    /// <summary>The newest invoice on paper.</summary>
    public async Task<byte[]> Invoice()
    {
        var address = await Page.Locator("section[aria-labelledby=account] a[href*='/Pickup/Invoice/']").Last.GetAttributeAsync("href");
        return await (await Page.Context.APIRequest.GetAsync(new Uri(new Uri(Page.Url), address).ToString())).BodyAsync();
    }

    public async Task<PickupScreen> Pay(string amount, string method)
    {
        await Type("Paying.Amount", amount);
        await Choose("Paying.Method", method);
        await Press("Book it");
        await Expect(Main).ToContainTextAsync($"Payment of ${amount} is booked.");
        return this;
    }

    /// <summary>Ticks off what a ticket stands for, as a scanner types it.</summary>
    public async Task<PickupScreen> Scan(string ticket, string what)
    {
        await Type("HandingOver.Scan", ticket);
        // With script the page stays and only what it says changes.
        await Button("Tick it off").ClickAsync();
        await Expect(Page.Locator("section[aria-labelledby=out]")).ToContainTextAsync($"{what}");
        await Expect(Page.Locator("section[aria-labelledby=out]")).ToContainTextAsync("is ticked.");
        return this;
    }

    public async Task<PickupScreen> Tick(string what)
    {
        await Page.Locator("section[aria-labelledby=out] label.tile", new PageLocatorOptions { HasText = what }).ClickAsync();
        return this;
    }

    /// <summary>Hands over what is ticked; answers the hand-over's id.</summary>
    public async Task<int> HandOver(string to)
    {
        await Type("HandingOver.To", to);
        await Press("Hand over");
        await Expect(Main).ToContainTextAsync($"To {to}");
        Assert.Equal(0, await Page.Locator("#problems").CountAsync());
        var address = await Page.Locator("a[href*='/Pickup/HandOver/']").Last.GetAttributeAsync("href");
        return int.Parse(address!.Split('/')[^1], CultureInfo.InvariantCulture);
    }
}
