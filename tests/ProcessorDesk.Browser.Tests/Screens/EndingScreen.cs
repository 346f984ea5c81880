using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace ProcessorDesk.Browser.Tests.Screens;

/// <summary>What is done about a batch that does not meet: each thing done is written down by itself.</summary>
internal sealed class EndingScreen : DeskScreen
{
    private EndingScreen(IPage page)
        : base(page)
    {
    }

    /// <summary>From the batch's page, by the link among its choices.</summary>
    public static async Task<EndingScreen> Open(BatchScreen batch)
    {
        await batch.Follow("Write down what was done");
        await Shows(batch.Page, "What is done about");
        return new EndingScreen(batch.Page);
    }

    /// <param name="stage">What part of the record it answers for; null for owners told.</param>
    public async Task<BatchScreen> WriteDown(string kind, string? stage, string name, string day, string reference)
    {
        // Who may write down one kind alone has it chosen already.
        if (await Page.Locator($"label.tile:has(input[name='Input.Kind'][value='{kind}'])").IsVisibleAsync())
            await Choose("Input.Kind", kind);
        if (stage is not null)
            await Choose("Input.Stage", stage);
        await Type("Input.Name", name);
        await Type("Input.On", day);
        await Type("Input.Reference", reference);
        await Press("Write it down");
        await Expect(Main).ToContainTextAsync("written down.");
        return new BatchScreen(Page);
    }
}
