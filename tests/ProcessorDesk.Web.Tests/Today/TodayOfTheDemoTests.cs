using System.Net;
using AngleSharp.Dom;
using ProcessorDesk.Records;
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
    [InlineData("holds", "Meat of job")]
    [InlineData("batches", "Rested: stuff it")]
    [InlineData("batches", "Mix load 2")]
    [InlineData("batches", "Draw the meat for load 1")]
    [InlineData("batches", "release it")]
    [InlineData("resting", "Rests until")]
    [InlineData("resting", "to go")]
    [InlineData("batches", "Pooled")]
    [InlineData("waiting", "May be pooled with others")]
    [InlineData("waiting", "On hold: in dispute")]
    [InlineData("waiting", "Own meat only")]
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
        using var desk = await demo.Tap(StaffRole.Manager);
        var page = await desk.Open("/Today");

        var text = page.Document.GetElementById(section)?.ParentElement?.TextContent ?? $"There is no section {section}.";
        Assert.Contains(words, string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(StaffRole.Clerk)]
    [InlineData(StaffRole.Cutter)]
    [InlineData(StaffRole.Kitchen)]
    [InlineData(StaffRole.Manager)]
    public async Task Every_line_leads_to_a_page_that_is_open_to_the_hand(StaffRole role)
    {
        using var desk = await demo.Tap(role);
        var page = await desk.Open("/Today");
        var links = page.Document.QuerySelectorAll("main a").Select(link => link.GetAttribute("href")!).Distinct().ToList();

        Assert.DoesNotContain("/Today", links);
        foreach (var link in links)
            Assert.True((await desk.Open(link)).Status == HttpStatusCode.OK, $"{role}: {link}");
    }
}
