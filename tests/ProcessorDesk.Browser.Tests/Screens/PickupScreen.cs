using Microsoft.Playwright;
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

    /// <summary>Subtotal, tax, total, paid until now, balance.</summary>
    public async Task<IReadOnlyList<string>> Sums() =>
        [.. (await Page.Locator("section[aria-labelledby=charges] dl.figures dd").AllInnerTextsAsync()).Select(OneLine)];

    public async Task<PickupScreen> Issue()
    {
        await Press("Issue the invoice");
        await Expect(Main).ToContainTextAsync("The invoice is issued");
        return this;
    }

    public async Task<PickupScreen> Pay(string amount, string method)
    {
        await Type("Paying.Amount", amount);
        await Choose("Paying.Method", method);
        await Press("Book it");
        await Expect(Main).ToContainTextAsync($"Payment of ${amount} is booked.");
        return this;
    }

    public async Task<PickupScreen> HandOver(string to)
    {
        await Type("HandingOver.To", to);
        await Press("Hand over");
        await Expect(Main).ToContainTextAsync($"Handed over to {to}");
        return this;
    }
}
