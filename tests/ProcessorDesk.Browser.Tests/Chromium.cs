using Microsoft.Playwright;
using Xunit;

namespace ProcessorDesk.Browser.Tests;

/// <summary>One browser for all tests; each opens windows of its own, with cookies of their own.</summary>
public sealed class Chromium : IAsyncLifetime
{
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    public async Task InitializeAsync()
    {
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
        {
            ExecutablePath = "/usr/bin/chromium",
            Args =
            [
                "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
                "--disable-background-networking", "--disable-component-update", "--disable-sync",
            ],
        });
    }

    public async Task DisposeAsync()
    {
        await _browser!.DisposeAsync();
        _playwright!.Dispose();
    }

    /// <summary>A window of so many pixels across; with the owner's choice of script and of light or dark.</summary>
    public async Task<IPage> Window(Uri address, int width = 1440, bool script = true, ColorScheme colours = ColorScheme.Light)
    {
        var context = await _browser!.NewContextAsync(new BrowserNewContextOptions
        {
            BaseURL = address.ToString(),
            ViewportSize = new ViewportSize { Width = width, Height = width < 700 ? 844 : 1000 },
            JavaScriptEnabled = script,
            ColorScheme = colours,
            ReducedMotion = ReducedMotion.Reduce,
        });
        context.SetDefaultTimeout(15_000);
        return await context.NewPageAsync();
    }
}

[CollectionDefinition(Name)]
public sealed class InChromium : ICollectionFixture<Chromium>
{
    public const string Name = "Chromium";
}
