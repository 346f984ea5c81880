using Microsoft.Playwright;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Browser.Tests;

/// <summary>Every page of the demo at a phone's, a tablet's and a desk's width: nothing for axe to find, nothing over the edge, nothing on the console.</summary>
[Collection(InChromium.Name)]
public sealed class EveryPageTests(Chromium chromium, DemoUnderTest shop) : IClassFixture<DemoUnderTest>
{
    private static readonly int[] _widths = [1440, 820, 390];

    /// <summary>An owner's own telephone may be an old and narrow one.</summary>
    private static readonly int[] _ownersWidths = [.. _widths, 320];

    [Fact]
    public async Task Every_page_can_be_used_by_all() => await LookAtAll(states: 1, ColorScheme.Light, atLeast: 25);

    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    [Trait("Tier", "Long")]
    public async Task Every_state_of_every_page_can_be_used_by_all(ColorScheme colours) => await LookAtAll(states: 7, colours, atLeast: 45);

    [Fact]
    public async Task Every_form_can_be_used_by_all_when_it_shows_an_error()
    {
        var page = await SignedIn(ColorScheme.Light);
        var console = PageFaults.Listen(page);
        var faults = new List<string>();
        var shown = 0;
        foreach (var address in EveryPage.Of(shop, states: 1).Where(address => !address.Contains('?', StringComparison.Ordinal)))
        {
            if (!await IsPage(page, address))
                continue;
            await page.SetViewportSizeAsync(_widths[0], 1000);
            await page.GotoAsync(address);
            if (!await Spoil(page))
                continue;
            shown++;
            faults.AddRange(await FaultsAtEachWidth(page, address + " with an error", console, "error"));
        }

        Assert.True(shown >= 10, $"Only {shown} forms showed an error.");
        Assert.Empty(faults);
        await page.Context.CloseAsync();
    }

    private async Task LookAtAll(int states, ColorScheme colours, int atLeast)
    {
        var page = await SignedIn(colours);
        var console = PageFaults.Listen(page);
        var faults = new List<string>();
        var seen = 0;
        foreach (var address in EveryPage.Of(shop, states))
        {
            if (!await IsPage(page, address))
                continue;
            await page.SetViewportSizeAsync(_widths[0], 1000);
            await page.GotoAsync(address);
            // The browser itself notes the status of the page of trouble, which is 404, and of a refusal on the bench, which is 400.
            console.RemoveAll(line => address == "/Trouble" && line.Contains("404", StringComparison.Ordinal) || EveryPage.IsRefused(address) && line.Contains("400", StringComparison.Ordinal));
            faults.AddRange(await FaultsAtEachWidth(page, address, console, $"{colours}"));
            seen++;
        }

        Assert.True(seen >= atLeast, $"Only {seen} pages were seen.");
        Assert.Empty(faults);
        await page.Context.CloseAsync();
    }

    private static async Task<List<string>> FaultsAtEachWidth(IPage page, string address, List<string> console, string picture)
    {
        var faults = new List<string>();
        foreach (var width in address.StartsWith("/Owner/", StringComparison.Ordinal) ? _ownersWidths : _widths)
        {
            await page.SetViewportSizeAsync(width, width < 700 ? 844 : 1000);
            faults.AddRange(await PageFaults.Of(page, address, width, console));
            await Pictures.Take(page, $"{width}-{picture}{Name(address)}");
        }

        return faults;
    }

    /// <summary>Writes nonsense into every line that can be typed in and sends the form; whether the page then said what is wrong.</summary>
    private static async Task<bool> Spoil(IPage page)
    {
        var found = await page.EvaluateAsync<bool>(
            """
            () => {
              const lines = 'input[type=text], input[type=password], input[type=tel]';
              const forms = [...document.querySelectorAll('main form[method=post]')].filter(form => form.querySelector(lines));
              const form = forms.find(form => form.querySelector('.main-action')) ?? forms[0];
              const button = form?.querySelector('.main-action') ?? [...form?.querySelectorAll('.actions button') ?? []].at(-1);
              if (!button) return false;
              for (let fold = form.closest('details'); fold; fold = fold.parentElement.closest('details')) fold.open = true;
              form.noValidate = true;
              form.querySelectorAll(lines).forEach(line => line.value = line.inputMode || line.type === 'password' ? '~' : '');
              button.dataset.spoiled = 'yes';
              return true;
            }
            """);
        if (!found)
            return false;
        await page.Locator("[data-spoiled]").ClickAsync();
        // The mark is gone with the page that bore it.
        await page.WaitForFunctionAsync("() => !document.querySelector('[data-spoiled]') && document.readyState === 'complete'");
        return await page.Locator("#problems").CountAsync() > 0;
    }

    /// <summary>A paper is not a page: the answer's own type tells.</summary>
    private static async Task<bool> IsPage(IPage page, string address)
    {
        // Leaving is a press, not a page; opening its address would end the walk.
        if (address is "/Door/Leave")
            return false;
        var answer = await page.Context.APIRequest.GetAsync(address);
        // The page of trouble says for itself that nothing is there.
        Assert.True(answer.Ok || (address == "/Trouble" && answer.Status == 404) || (EveryPage.IsRefused(address) && answer.Status == 400), $"{address}: {answer.Status}");
        return answer.Headers["content-type"].StartsWith("text/html", StringComparison.Ordinal);
    }

    private async Task<IPage> SignedIn(ColorScheme colours)
    {
        var page = await chromium.Window(shop.Address, colours: colours);
        var manager = shop.Read(records => records.Staff.First(staff => staff.Role == StaffRole.Manager && staff.RetiredAt == null).Name);
        await page.GotoAsync("/Door");
        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = manager }).ClickAsync();
        await page.WaitForURLAsync(url => !url.Contains("/Door", StringComparison.Ordinal));
        return page;
    }

    private static string Name(string address) => string.Concat(address.Take(100).Select(letter => char.IsLetterOrDigit(letter) ? letter : '-'));
}
