using Microsoft.Playwright;

namespace ProcessorDesk.Browser.Tests;

/// <summary>Pictures of the pages for eyes to look at, in the folder that DESK_PICTURES names; none where it names none.</summary>
internal static class Pictures
{
    private static readonly string? _folder = Environment.GetEnvironmentVariable("DESK_PICTURES") is { Length: > 0 } folder ? folder : null;

    public static async Task Take(IPage page, string name)
    {
        if (_folder is not null)
            await page.ScreenshotAsync(new PageScreenshotOptions { Path = Path.Combine(_folder, name + ".png"), FullPage = true });
    }

    /// <summary>A paper beside the pictures.</summary>
    public static async Task Keep(byte[] paper, string name)
    {
        if (_folder is not null)
            await File.WriteAllBytesAsync(Path.Combine(_folder, name + ".pdf"), paper);
    }
}
