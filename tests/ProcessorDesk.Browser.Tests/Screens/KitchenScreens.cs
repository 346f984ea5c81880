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
    public async Task<BatchScreen> Step(string words)
    {
        await Press(words);
        await Expect(Page.Locator("section[aria-labelledby=steps]")).ToContainTextAsync(words);
        return this;
    }

    /// <summary>Readings of the first probe, each with the time as the shop's clock shows it.</summary>
    public async Task<BatchScreen> Readings(int id, string stage, IReadOnlyList<(string Time, string Degrees)> lines)
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

        await Press("Write them down");
        await Expect(Main).ToContainTextAsync($"{lines.Count} readings are written down");
        return await Open(Page, id);
    }

    public async Task<BatchScreen> Finished(int id, string tare, string gross)
    {
        await Page.GotoAsync($"/Kitchen/Weigh/{id}");
        if (await Page.Locator("input[name='Input.Load']").CountAsync() > 0)
            await Page.Locator("label.tile:has(input[name='Input.Load'])", new PageLocatorOptions { HasText = "together" }).ClickAsync();
        await Type("Input.Tare", tare);
        await Type("Input.Gross", gross);
        await Press("Save the weight");
        Assert.Equal(0, await Page.Locator("#problems").CountAsync());
        return await Open(Page, id);
    }

    public async Task Release()
    {
        await Press("Release to the owners");
        await Expect(Page.Locator(".page-head")).ToContainTextAsync("Released");
    }
}

/// <summary>One filling of the mixer.</summary>
internal sealed class LoadScreen(IPage page) : DeskScreen(page)
{
    public async Task<LoadScreen> Draw(int lug, string pounds, bool empties = false)
    {
        if (await Page.Locator("main [name='Draw.Lug']").IsHiddenAsync())
            await Page.Locator("summary", new PageLocatorOptions { HasText = "Draw more into it" }).ClickAsync();
        await Type("Draw.Lug", lug.ToString(CultureInfo.InvariantCulture));
        await Type("Draw.Weighed", pounds);
        if (empties)
            await Field("Draw.Empties").CheckAsync();
        await Press("Save the draw");
        await Expect(Main).ToContainTextAsync($"{pounds} lb of lug {lug} is in load");
        return this;
    }

    /// <summary>What the cure comes to on the meat as drawn and the fat as typed: the panel that is set apart.</summary>
    public async Task<string> CureFor(bool script, string fat, string cure, string waitedFor)
    {
        await Fill(fat, cure);
        if (!script)
            await Press("Work the amounts out");
        await Expect(Page.Locator("#amounts")).ToContainTextAsync(waitedFor);
        return await Words("#amounts .cure");
    }

    public async Task<string> Amounts() => await Words("#amounts");

    /// <summary>Tries to mix; a refusal leaves the page as it is, with what was typed.</summary>
    public async Task<string> Refused(string fat, string cure)
    {
        await Fill(fat, cure);
        await Field("Mix.AsAsked").CheckAsync();
        await Press("Mixed");
        await Expect(Page.Locator("#problems")).ToContainTextAsync("Too much nitrite");
        Assert.Equal(cure, await Cure.First.InputValueAsync());
        return await Words();
    }

    /// <param name="fat">Null where none goes in.</param>
    /// <param name="cure">Null where the product is not cured.</param>
    public async Task<BatchScreen> Mix(string? fat, string? cure)
    {
        await Fill(fat, cure);
        if (await Page.Locator("main [name='Mix.AsAsked'][type=checkbox]").CountAsync() > 0)
            await Field("Mix.AsAsked").CheckAsync();
        await Press("Mixed");
        await Expect(Main).ToContainTextAsync("is mixed.");
        return new BatchScreen(Page);
    }

    private ILocator Cure => Page.Locator("main form.mix .field:has(label:has-text('curing salt')) input");

    private async Task Fill(string? fat, string? cure)
    {
        if (fat is not null)
            await Type("Mix.Fat", fat);
        if (cure is null)
            return;
        await Cure.First.FillAsync(cure);
        await Page.Locator("main form.mix [name$='.Again']").FillAsync(cure);
    }
}
