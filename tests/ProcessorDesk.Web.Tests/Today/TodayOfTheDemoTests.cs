using AngleSharp.Dom;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Today;

/// <summary>The made-up shop's day shows every kind of trouble and of work there is.</summary>
public sealed class TodayOfTheDemoTests(DemoUnderTest demo) : IClassFixture<DemoUnderTest>
{
    [Theory]
    [InlineData("holds", "On hold: waiting for the disease test")]
    [InlineData("holds", "On hold: record incomplete")]
    [InlineData("holds", "On hold: wrong meat or amount is in")]
    [InlineData("holds", "On hold: tag missing")]
    [InlineData("cooler", "Hung too long")]
    [InlineData("cut", "Elk")]
    [InlineData("cut", "Beef")]
    [InlineData("cut", "Hog")]
    [InlineData("cut", "Lamb")]
    [InlineData("split", "Short of trim")]
    [InlineData("resting", "Rests until")]
    [InlineData("resting", "to go")]
    [InlineData("batches", "Pooled")]
    [InlineData("waiting", "May be pooled with others")]
    [InlineData("box", "Promised")]
    [InlineData("ready", "owed")]
    [InlineData("ready", "Paid")]
    [InlineData("ready", "Part of it was fetched")]
    [InlineData("unclaimed", "days")]
    [InlineData("promised", "In the kitchen")]
    [InlineData("details", "details after")]
    [InlineData("struck", "Lean trim")]
    public async Task The_day_says_so(string section, string words)
    {
        using var desk = demo.Stranger();
        var door = await desk.Open("/Door");
        await door.Press(door.Document.QuerySelectorAll("button").Single(button => button.TextContent.Contains("Manager", StringComparison.Ordinal)).TextContent.Trim());
        var page = await desk.Open("/Today");

        var text = page.Document.GetElementById(section)?.ParentElement?.TextContent ?? $"There is no section {section}.";
        Assert.Contains(words, string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
    }
}
