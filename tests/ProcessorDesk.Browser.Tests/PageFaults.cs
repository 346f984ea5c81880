using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace ProcessorDesk.Browser.Tests;

/// <summary>What no page may have: a finding of axe, something over the edge, a word on the console.</summary>
internal static class PageFaults
{
    private static readonly AxeRunOptions _rules = new()
    {
        RunOnly = new RunOnlyOptions { Type = "tag", Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"] },
        ResultTypes = [ResultType.Violations],
    };

    /// <summary>What is wrong with the page as it stands; empties the console.</summary>
    public static async Task<IEnumerable<string>> Of(IPage page, string address, int width, List<string> console)
    {
        var faults = new List<string>();
        var axe = await page.RunAxe(_rules);
        faults.AddRange(axe.Violations.Select(one => $"{address} at {width}: {one.Id}, {string.Join("; ", one.Nodes.Take(2).Select(node => node.Html))}"));
        var over = await page.EvaluateAsync<int>("() => document.documentElement.scrollWidth - document.documentElement.clientWidth");
        if (over > 0)
        {
            var what = await page.EvaluateAsync<string>(
                "() => [...document.querySelectorAll('body *')].filter(e => e.getBoundingClientRect().right > document.documentElement.clientWidth + 0.5).slice(-2).map(e => e.outerHTML.slice(0, 120)).join(' | ')");
            faults.Add($"{address} at {width}: {over} px over the edge: {what}");
        }

        faults.AddRange(console.Select(line => $"{address} at {width}: console: {line}"));
        console.Clear();
        return faults;
    }

    /// <summary>What the browser complains of from now on, as it comes.</summary>
    public static List<string> Listen(IPage page)
    {
        var lines = new List<string>();
        page.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning") lines.Add($"{message.Text} ({message.Location})");
        };
        page.PageError += (_, error) => lines.Add(error);
        return lines;
    }
}
