using System.Globalization;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace ProcessorDesk.Browser.Tests.Screens;

/// <summary>What waits for a batch, and what is on its way.</summary>
internal sealed class KitchenScreen : DeskScreen
{
    private KitchenScreen(IPage page)
        : base(page)
    {
    }

    public static async Task<KitchenScreen> Open(IPage page)
    {
        await page.GotoAsync("/Kitchen");
        Assert.Equal(0, await page.Locator("#problems").CountAsync());
        return new KitchenScreen(page);
    }

    /// <summary>One owner's allotment of a product into a batch of its own.</summary>
    public async Task<BatchScreen> Plan(string product, string owner)
    {
        var form = Page.Locator("form.waiting", new PageLocatorOptions { HasText = product });
        await form.Locator("tbody tr", new LocatorLocatorOptions { HasText = owner }).Locator("input[type=checkbox]").First.CheckAsync();
        await form.GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = "Plan a batch" }).ClickAsync();
        await Expect(Page.Locator("h1")).ToContainTextAsync($"{product}, batch");
        return new BatchScreen(Page);
    }
}

/// <summary>One batch: its loads, its record, its release.</summary>
internal sealed class BatchScreen(IPage page) : DeskScreen(page)
{
    public int BatchId => int.Parse(new Uri(Page.Url).Segments[^1], CultureInfo.InvariantCulture);

    public static async Task<BatchScreen> Open(IPage page, int id)
    {
        await page.GotoAsync($"/Kitchen/Batch/{id}");
        await Shows(page, "batch");
        return new BatchScreen(page);
    }

    public Task<int> LoadCount() => Page.Locator("table.loads tbody tr").CountAsync();

    /// <summary>Words of a load's row: "1 To be mixed ... of 12.50 lb".</summary>
    public async Task<string> LoadRow(int number) => OneLine(await Page.Locator("table.loads tbody tr").Nth(number - 1).InnerTextAsync());

    public async Task<LoadScreen> OpenLoad(int number)
    {
        await Page.Locator("table.loads tbody tr").Nth(number - 1).GetByRole(AriaRole.Link).ClickAsync();
        await Shows(Page, $"Load {number} of batch");
        return new LoadScreen(Page);
    }

    /// <summary>Notes a step by its words and waits until it stands among what is done.</summary>
    /// <param name="pieces">Counted with it, by load; none where nobody counts.</param>
    public async Task<BatchScreen> Step(string words, params int[] pieces)
    {
        foreach (var (i, count) in pieces.Index())
            await Type($"Input.Pieces[{i}]", count.ToString(CultureInfo.InvariantCulture));
        await Press(words);
        await Expect(Page.Locator("section[aria-labelledby=steps]")).ToContainTextAsync(words);
        return this;
    }

    /// <summary>Readings of the first probe, each with the time as the shop's clock shows it.</summary>
    /// <param name="acidity">Read at some of the lines, by place.</param>
    public async Task<BatchScreen> Readings(int id, string stage, IReadOnlyList<(string Time, string Degrees)> lines, IReadOnlyDictionary<int, string>? acidity = null)
    {
        await Page.GotoAsync($"/Kitchen/Readings/{id}");
        await Choose("Input.Stage", stage);
        while (await Field($"Input.Lines[{lines.Count - 1}].Time").CountAsync() == 0)
            await Press("More lines");
        for (var i = 0; i < lines.Count; i++)
        {
            await Type($"Input.Lines[{i}].Time", lines[i].Time);
            await Type($"Input.Lines[{i}].Probe1", lines[i].Degrees);
        }

        foreach (var (i, ph) in acidity ?? new Dictionary<int, string>())
            await Type($"Input.Lines[{i}].Acidity", ph);
        await Press("Write them down");
        await Expect(Main).ToContainTextAsync($"{lines.Count + (acidity?.Count ?? 0)} readings are written down");
        return await Open(Page, id);
    }

    /// <param name="pieces">Counted, where it is made in pieces.</param>
    /// <param name="left">What stayed in the machines; null where it is not weighed.</param>
    /// <param name="tile">What lies on the scale, where there is a choice.</param>
    public async Task<BatchScreen> Finished(int id, string tare, string gross, int? pieces = null, string? left = null, string tile = "together")
    {
        await Page.GotoAsync($"/Kitchen/Weigh/{id}");
        if (await Page.Locator("input[name='Input.Load']").CountAsync() > 0)
            await Page.Locator("label.tile:has(input[name='Input.Load'])", new PageLocatorOptions { HasText = tile }).ClickAsync();
        await Type("Input.Tare", tare);
        await Type("Input.Gross", gross);
        if (pieces is { } count)
            await Type("Input.Pieces", count.ToString(CultureInfo.InvariantCulture));
        if (left is not null)
            await Type("Input.Left", left);
        await Press("Save the weight");
        Assert.Equal(0, await Page.Locator("#problems").CountAsync());
        return await Open(Page, id);
    }

    /// <summary>Where its weight went, line by line as the page says it.</summary>
    public async Task<IReadOnlyDictionary<string, string>> Balance() =>
        (await Rows(Page.Locator("section[aria-labelledby=balance] table"))).ToDictionary(row => row[0], row => row[1]);

    /// <param name="support">The shop's own written process, which the manager names where the tables do not reach.</param>
    public async Task Release(string? support = null)
    {
        if (support is not null)
            await Type("Input.WrittenSupport", support);
        await Press("Release to the owners");
        await Expect(Page.Locator(".page-head")).ToContainTextAsync("Released");
    }
}
