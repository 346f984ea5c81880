using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace ProcessorDesk.Browser.Tests.Screens;

/// <summary>The counter's form for what comes in.</summary>
internal sealed class DropOffScreen : DeskScreen
{
    private DropOffScreen(IPage page)
        : base(page)
    {
    }

    public static async Task<DropOffScreen> Open(IPage page)
    {
        await page.GotoAsync("/Counter/DropOff");
        await Shows(page, "Drop-off");
        return new DropOffScreen(page);
    }

    public async Task<DropOffScreen> Owner(string name, string phone)
    {
        await Type("Input.Owner.Name", name);
        await Type("Input.Owner.Phone", phone);
        return this;
    }

    public async Task<DropOffScreen> Deer(int at, string tag, string weight)
    {
        await Type($"Input.Animals[{at}].Tag", tag);
        await Choose($"Input.Animals[{at}].State", "FieldDressed");
        await Type($"Input.Animals[{at}].Weight", weight);
        return this;
    }

    public async Task<DropOffScreen> AnotherAnimal()
    {
        await Press("Add another animal");
        await Shows(Page, "Drop-off");
        return this;
    }

    public async Task<DropOffScreen> Ask(int at, string product, string kind, string amount)
    {
        if (await Field($"Input.Order.Asks[{at}].ProductId").CountAsync() == 0)
            await Press("Another line");
        var option = Field($"Input.Order.Asks[{at}].ProductId").Locator("option", new LocatorLocatorOptions { HasText = product });
        await Field($"Input.Order.Asks[{at}].ProductId").SelectOptionAsync(await option.First.GetAttributeAsync("value") ?? "");
        await Field($"Input.Order.Asks[{at}].Kind").SelectOptionAsync(kind);
        await Type($"Input.Order.Asks[{at}].Amount", amount);
        return this;
    }

    /// <summary>The panel beside the form, once it says what is waited for; without script it says so after a press.</summary>
    public async Task<string> Outlook(bool script, string waitedFor)
    {
        if (!script)
            await Press("Work it out again");
        await Expect(Page.Locator("#outlook")).ToContainTextAsync(waitedFor);
        return await Words("#outlook");
    }

    public async Task<TakenInScreen> TakeIn()
    {
        await Press("Take it in");
        return await TakenInScreen.On(Page);
    }
}
