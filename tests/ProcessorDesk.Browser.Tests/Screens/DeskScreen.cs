using Microsoft.Playwright;
using Xunit;

namespace ProcessorDesk.Browser.Tests.Screens;

/// <summary>A page as a hand has it before it. Each kind is made only where the browser shows it.</summary>
internal class DeskScreen(IPage page)
{
    public IPage Page { get; } = page;

    public ILocator Main => Page.Locator("main");

    /// <summary>The page's words, each run of blanks as one.</summary>
    public async Task<string> Words(string part = "main") => OneLine(await Page.Locator(part).First.InnerTextAsync());

    public async Task Says(params string[] words)
    {
        var text = await Words();
        foreach (var word in words) Assert.Contains(word, text, StringComparison.Ordinal);
    }

    public Task Type(string name, string value) => Field(name).FillAsync(value);

    public ILocator Field(string name) => Page.Locator($"main [name='{name}']:not([type=hidden])").First;

    /// <summary>Takes a tile by what it sends.</summary>
    public Task Choose(string name, string value) => Page.Locator($"label.tile:has(input[name='{name}'][value='{value}'])").ClickAsync();

    public Task Pick(string name, string words) =>
        Field(name).SelectOptionAsync(new SelectOptionValue { Label = words });

    /// <summary>Presses a button, by the beginning of its words, and waits for the page that follows.</summary>
    public async Task Press(string words)
    {
        await Page.RunAndWaitForResponseAsync(
            () => Button(words).ClickAsync(), answer => answer.Request.IsNavigationRequest && answer.Status is < 300 or >= 400);
        await Page.WaitForLoadStateAsync(LoadState.Load);
    }

    public ILocator Button(string words) => Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = words }).First;

    public async Task Follow(string link)
    {
        await Page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = link }).First.ClickAsync();
        await Page.WaitForLoadStateAsync(LoadState.Load);
    }

    /// <summary>The paper a link leads to, fetched with the window's own cookies.</summary>
    public async Task<byte[]> Paper(string link)
    {
        var address = await Page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = link }).First.GetAttributeAsync("href");
        var answer = await Page.Context.APIRequest.GetAsync(new Uri(new Uri(Page.Url), address).ToString());
        Assert.Equal("application/pdf", answer.Headers["content-type"]);
        return await answer.BodyAsync();
    }

    /// <summary>The rows of the first table after a heading or caption of these words, cell by cell.</summary>
    public static async Task<IReadOnlyList<string[]>> Rows(ILocator table)
    {
        var rows = new List<string[]>();
        foreach (var row in await table.Locator("tbody tr").AllAsync())
            rows.Add([.. (await row.Locator("th, td").AllInnerTextsAsync()).Select(OneLine)]);
        return rows;
    }

    public static string OneLine(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    protected static async Task Shows(IPage page, string heading)
    {
        await Assertions.Expect(page.Locator("h1")).ToContainTextAsync(heading);
        Assert.Equal(0, await page.Locator("#problems").CountAsync());
    }
}
