using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace ProcessorDesk.Browser.Tests.Screens;

/// <summary>One filling of the mixer.</summary>
internal sealed class LoadScreen(IPage page) : DeskScreen(page)
{
    /// <param name="scan">What the scanner types; null where the hand types the lug's number.</param>
    public async Task<LoadScreen> Draw(int lug, string pounds, bool empties = false, string? scan = null)
    {
        await PutIn(scan ?? lug.ToString(CultureInfo.InvariantCulture), pounds);
        if (empties)
            await Field("Draw.Empties").CheckAsync();
        await Press("Save the draw");
        await Expect(Main).ToContainTextAsync($"{pounds} lb of lug {lug} is in load");
        return this;
    }

    /// <summary>A lug the page does not take, and what it says about it.</summary>
    public async Task<string> RefusesDraw(string scan, string pounds)
    {
        await PutIn(scan, pounds);
        await Press("Save the draw");
        return await Words("#problems");
    }

    /// <summary>What was refused is in all the same, and the hand says how that came about.</summary>
    public async Task<LoadScreen> AlreadyIn(string because)
    {
        await Type("Draw.AlreadyInBecause", because);
        await Press("It is already in");
        await Expect(Main).ToContainTextAsync("The batch is on hold.");
        return this;
    }

    /// <summary>What the load still wants of whom, and the open lugs it lies in.</summary>
    public async Task<IReadOnlyList<WantedLean>> Wants()
    {
        var rows = await Rows(Page.Locator("table.list", new PageLocatorOptions { HasText = "Lean for this load" }));
        return [.. rows.Select(row => new WantedLean(
            Regex.Match(row[0], @"^(.+) Job \d+$").Groups[1].Value,
            row[3] == "Enough" || row[3].StartsWith("All there is", StringComparison.Ordinal) ? 0m : Pounds(row[3]),
            [.. Regex.Matches(row[4], @"lug (\d+), ([\d,.]+ lb)").Select(lug => (int.Parse(lug.Groups[1].Value, CultureInfo.InvariantCulture), Pounds(lug.Groups[2].Value)))]))];
    }

    /// <summary>The added fat that is planned; null where none goes in.</summary>
    public async Task<decimal?> PlannedFat()
    {
        await Unfold();
        return await Field("Mix.Fat").CountAsync() == 0 ? null
            : Pounds(Regex.Match(OneLine(await Page.Locator(".field:has([name='Mix.Fat'])").InnerTextAsync()), @"([\d.]+ lb) planned").Groups[1].Value);
    }

    /// <summary>What is to be weighed in beside meat and cure, as the page says it for the small scale.</summary>
    public async Task<IReadOnlyDictionary<string, string>> Others() => await Page.Locator("#amounts table").CountAsync() == 0
        ? new Dictionary<string, string>()
        : (await Rows(Page.Locator("#amounts table"))).ToDictionary(row => row[0], row => row[1]);

    /// <summary>Types an ingredient's own weight, in grams.</summary>
    public async Task Weigh(string ingredient, string grams)
    {
        var field = Page.Locator("main form.mix .field", new PageLocatorOptions { HasText = $"{ingredient}, as weighed" }).Locator("input");
        if (await field.IsHiddenAsync())
            await Page.Locator("summary", new PageLocatorOptions { HasText = "Something went in otherwise" }).ClickAsync();
        await field.FillAsync(grams);
    }

    /// <summary>Takes a lot of an ingredient by the beginning of its words.</summary>
    public async Task FromLot(string label, string lot)
    {
        var pick = Page.Locator("main form.mix").GetByLabel(label);
        var words = (await pick.Locator("option").AllTextContentsAsync()).Single(option => option.StartsWith(lot, StringComparison.Ordinal));
        await pick.SelectOptionAsync(new SelectOptionValue { Label = words });
    }

    /// <summary>Types the fat and waits until the page has asked what it comes to; then nothing is under way.</summary>
    public async Task TypeFat(string fat)
    {
        await Unfold();
        await Page.RunAndWaitForResponseAsync(() => Type("Mix.Fat", fat), answer => answer.Url.Contains("handler=Amounts", StringComparison.Ordinal));
    }

    /// <summary>Types fat and cure and waits until the page reckons with them.</summary>
    public async Task TypeMix(string? fat, string? cure, string block)
    {
        await Fill(fat, cure);
        await Expect(Page.Locator("#amounts")).ToContainTextAsync(block);
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
        await Unfold();
        if (fat is not null)
            await Type("Mix.Fat", fat);
        if (cure is null)
            return;
        await Cure.First.FillAsync(cure);
        await Page.Locator("main form.mix [name$='.Again']").FillAsync(cure);
    }

    /// <summary>The form to mix is folded away while meat is wanting.</summary>
    private async Task Unfold()
    {
        if (await Button("Mixed").CountAsync() == 0)
            await Page.Locator("summary", new PageLocatorOptions { HasText = "This is all the meat there is" }).ClickAsync();
    }

    private async Task PutIn(string lug, string pounds)
    {
        if (await Page.Locator("main [name='Draw.Lug']").IsHiddenAsync())
            await Page.Locator("summary", new PageLocatorOptions { HasText = "Draw more into it" }).ClickAsync();
        await Type("Draw.Lug", lug);
        await Type("Draw.Weighed", pounds);
    }

    private static decimal Pounds(string words) => decimal.Parse(words.Replace(" lb", "", StringComparison.Ordinal), NumberStyles.Number, CultureInfo.InvariantCulture);
}

/// <param name="Still">Pounds that are wanted yet.</param>
/// <param name="Lugs">Number and pounds left, as the page says.</param>
internal sealed record WantedLean(string Owner, decimal Still, IReadOnlyList<(int Number, decimal Left)> Lugs);
