using Microsoft.Playwright;

namespace ProcessorDesk.Browser.Tests.KitchenDay;

/// <summary>Looks at each kind of screen the first time it is passed, as all pages are looked at, and listens to the console all day.</summary>
internal sealed class DayEyes(IPage page)
{
    private readonly List<string> _console = PageFaults.Listen(page);
    private readonly HashSet<string> _seen = [];
    private readonly List<string> _faults = [];

    public async Task Look(string screen)
    {
        if (!_seen.Add(screen))
            return;
        _faults.AddRange(await PageFaults.Of(page, screen, page.ViewportSize!.Width, _console));
        await Pictures.Take(page, "kitchen-day-" + screen.Replace(' ', '-'));
    }

    /// <summary>All that was wrong, up to now.</summary>
    public IReadOnlyList<string> Faults() => [.. _faults, .. _console.Select(line => "console: " + line)];
}
