using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace ProcessorDesk.Browser.Tests.Screens;

/// <summary>The cut sheet at the table.</summary>
internal sealed class SheetScreen : DeskScreen
{
    private readonly int _job;

    private SheetScreen(IPage page, int job)
        : base(page) => _job = job;

    public static async Task<SheetScreen> Open(IPage page, int job, string owner)
    {
        await page.GotoAsync($"/Cutting/Sheet/{job}");
        await Shows(page, owner);
        return new SheetScreen(page, job);
    }

    public async Task<SheetScreen> Start()
    {
        await Press("Start cutting");
        await Expect(Main).ToContainTextAsync("Cutting has started.");
        return this;
    }

    public async Task<WeighInScreen> WeighIn()
    {
        await Page.GotoAsync($"/Cutting/WeighIn/{_job}");
        return await WeighInScreen.On(Page);
    }

    public async Task<SheetScreen> Finish()
    {
        await Press("Finish cutting");
        await Expect(Main).ToContainTextAsync("Cutting is finished.");
        return this;
    }
}

/// <summary>The scale: lug, figure, net, saved.</summary>
internal sealed class WeighInScreen : DeskScreen
{
    private WeighInScreen(IPage page)
        : base(page)
    {
    }

    public static async Task<WeighInScreen> On(IPage page)
    {
        await Shows(page, "Weigh in for");
        return new WeighInScreen(page);
    }

    /// <summary>Weighs a lug and sees its net before it is saved.</summary>
    public async Task<WeighInScreen> Weigh(int lug, int animal, string gross, string net, bool script)
    {
        await Type("Input.Lug", $"{lug}");
        var tile = Page.Locator($"input[name='Input.AnimalIds'][value='{animal}']");
        if (!await tile.IsCheckedAsync()) await Choose("Input.AnimalIds", $"{animal}");
        if (script)
        {
            foreach (var digit in gross)
                await Page.Locator($".keypad[data-keypad=Input_Gross] [data-key='{digit}']").ClickAsync();
        }
        else
        {
            await Type("Input.Gross", gross);
            await Press("Show the net");
        }

        await Expect(Page.Locator("#net .net")).ToContainTextAsync(net);
        await Press("Save the weight");
        await Expect(Page.Locator(".said")).ToContainTextAsync($"{net} lb saved.");
        return this;
    }

    public async Task<WeighInScreen> StrikeLast(string why)
    {
        await Page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Strike" }).First.ClickAsync();
        await Shows(Page, "Strike out");
        await Choose("Input.Because", why);
        await Press("Strike it out");
        await Expect(Page.Locator(".said")).ToContainTextAsync($"is struck out: {why}");
        return this;
    }
}
