using System.Globalization;
using Microsoft.Playwright;
using ProcessorDesk.Browser.Tests.Screens;
using ProcessorDesk.Paper.Tests.Rendering;
using Xunit;

namespace ProcessorDesk.Browser.Tests.Stories;

/// <summary>
/// What is made goes into boxes and out of the door, in two hand-overs with an invoice each. Rates are the story's own: 95.00 a deer, ring
/// sausage 3.75 a pound green, summer 4.25 and hot 2.50 finished, plain ground 1.10 lean, added fat 1.95; tax 6.25 % of each taxed line.
/// </summary>
internal sealed class PickupStory(IPage page, StoryShop shop, int job, string owner, bool script)
{
    private static readonly (string What, string Packs, string Gross, string Net)[] _fresh = [("Hot sausage", "14", "15.70", "14.90"), ("Plain ground", "38", "39.20", "38.40")];

    private static readonly (string What, string Packs, string Gross, string Net)[] _cured = [("Ring sausage", "20", "33.90", "33.10"), ("Summer sausage", "12", "20.40", "19.60")];

    public async Task BoxWhatIsFresh() => await Box(_fresh);

    public async Task BoxWhatIsCured()
    {
        await Box(_cured);
        await (await FreezerScreen.Open(page, job, owner)).Everything();
    }

    /// <summary>The first invoice bears the deposit; the summary says on both copies what is still being made.</summary>
    public async Task FetchWhatIsFresh()
    {
        var pickup = await PickupScreen.Open(page, job, owner);
        (decimal Amount, bool Taxed)[] lines = [(95.00m, false), (95.00m, false), (14.90m * 2.50m, true), (38.53m * 1.10m, false), (3.68m * 1.95m, true)];
        var (amounts, taxes) = Reckoned(lines);
        Assert.Equal((276.81m, 2.78m), (amounts.Sum(), taxes.Sum()));
        var total = amounts.Sum() + taxes.Sum();
        await Expect(pickup, amounts, taxes, paidAhead: 50.00m, toPay: total - 50.00m);
        Assert.Equal(229.59m, total - 50.00m);
        await Pictures.Take(page, $"story-{page.ViewportSize!.Width}-charges");

        await pickup.Issue();
        await Invoice(pickup, [.. amounts, .. taxes.Where(tax => tax > 0m), total, 50.00m, total - 50.00m]);
        await pickup.Pay(Hundredths(total - 50.00m), "Cash");
        foreach (var (what, ticket) in await Tickets())
            await pickup.Scan(ticket, what);
        var handOver = await pickup.HandOver(owner);
        await Pictures.Take(page, $"story-{page.ViewportSize!.Width}-handed-over-first");

        using var summary = await Summary(handOver);
        // Two copies, the owner's and the shop's, and each says what is not there yet.
        Assert.True(summary.Pages.Count >= 2);
        var copies = summary.Text.Split("Ring sausage").Length - 1;
        Assert.True(copies >= 2, $"Ring sausage is said {copies} times.");
        foreach (var words in new[] { "14.90 lb", "38.40 lb", "Summer sausage", owner })
            Assert.Contains(words, summary.Text, StringComparison.Ordinal);
        await page.GotoAsync($"/Pickup/HandOver/{handOver}");
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("Ring sausage");
        await Pictures.Take(page, $"story-{page.ViewportSize!.Width}-summary");
    }

    /// <summary>The second invoice is for the rest alone and does not count the deposit again; with the last box the job is closed.</summary>
    public async Task FetchTheRest()
    {
        var pickup = await PickupScreen.Open(page, job, owner);
        (decimal Amount, bool Taxed)[] lines = [(37.14m * 3.75m, true), (19.60m * 4.25m, true), ((10.71m + 4.55m) * 1.95m, true)];
        var (amounts, taxes) = Reckoned(lines);
        Assert.Equal((252.34m, 15.78m), (amounts.Sum(), taxes.Sum()));
        var total = amounts.Sum() + taxes.Sum();
        await Expect(pickup, amounts, taxes, paidAhead: 0m, toPay: total);
        await pickup.Issue();
        await Invoice(pickup, [.. amounts, .. taxes, total]);
        await pickup.Pay(Hundredths(total), "Check");
        foreach (var (what, _, _, _) in _cured)
            await pickup.Tick(what);
        var handOver = await pickup.HandOver(owner);
        await pickup.Says("All handed over");
        await Pictures.Take(page, $"story-{page.ViewportSize!.Width}-handed-over");
        using var summary = await Summary(handOver);
        foreach (var words in new[] { "33.10 lb", "19.60 lb" })
            Assert.Contains(words, summary.Text, StringComparison.Ordinal);
    }

    private async Task Box((string What, string Packs, string Gross, string Net)[] boxes)
    {
        var freezer = await FreezerScreen.Open(page, job, owner);
        foreach (var (what, packs, gross, net) in boxes)
            freezer = await freezer.Pack(what, packs, gross, "0.80", net, "Freezer 1, shelf 3", script);
        var code = await freezer.Ticket(boxes[0].What);
        foreach (var stock in new[] { "4 × 6", "4 × 2" })
        {
            var paper = await freezer.Label(boxes[0].What, stock);
            await Pictures.Keep(paper, $"story-{page.ViewportSize!.Width}-label-{stock.Replace(" ", "", StringComparison.Ordinal)}");
            using var label = new RenderedPdf(paper);
            PaperChecks.SaysNotForSale(label, label.Pages[0]);
            PaperChecks.HoldsTheCode(label, label.Pages[0], code);
            Assert.Contains(boxes[0].What, label.Text, StringComparison.Ordinal);
            Assert.DoesNotContain(owner, label.Text, StringComparison.Ordinal);
        }

        await Pictures.Take(page, $"story-{page.ViewportSize!.Width}-boxes");
    }

    /// <summary>What stands on the labels of the boxes, as a scanner reads it.</summary>
    private async Task<List<(string What, string Ticket)>> Tickets()
    {
        var back = page.Url;
        var freezer = await FreezerScreen.Open(page, job, owner);
        var tickets = new List<(string, string)>();
        foreach (var (what, _, _, _) in _fresh)
            tickets.Add((what, await freezer.Ticket(what)));
        await page.GotoAsync(back);
        return tickets;
    }

    private async Task<RenderedPdf> Summary(int handOver)
    {
        var answer = await page.Context.APIRequest.GetAsync(new Uri(new Uri(page.Url), $"/Pickup/Summary/{handOver}").ToString());
        await Pictures.Keep(await answer.BodyAsync(), $"story-{page.ViewportSize!.Width}-summary-{handOver}");
        var summary = new RenderedPdf(await answer.BodyAsync());
        PaperChecks.SaysNotForSale(summary, summary.Pages[0]);
        PaperChecks.HoldsTheCode(summary, summary.Pages[0], shop.ClaimOf(job));
        return summary;
    }

    private static async Task Expect(PickupScreen pickup, List<decimal> amounts, List<decimal> taxes, decimal paidAhead, decimal toPay)
    {
        var charges = await pickup.Charges();
        Assert.Equal(amounts.Select(Dollars), charges.Select(row => row[4]));
        Assert.Equal(taxes.Select(tax => tax == 0m ? "" : Dollars(tax)), charges.Select(row => row[3]));
        Assert.Equal(new[] { amounts.Sum(), taxes.Sum(), amounts.Sum() + taxes.Sum(), paidAhead, toPay }.Select(Dollars), await pickup.Sums());
    }

    private static async Task Invoice(PickupScreen pickup, List<decimal> figures)
    {
        var paper = await pickup.Invoice();
        await Pictures.Keep(paper, $"story-{pickup.Page.ViewportSize!.Width}-invoice-{figures.Count}");
        using var invoice = new RenderedPdf(paper);
        foreach (var figure in figures)
            Assert.Contains(Dollars(figure), invoice.Text, StringComparison.Ordinal);
    }

    private static (List<decimal> Amounts, List<decimal> Taxes) Reckoned((decimal Amount, bool Taxed)[] lines)
    {
        var amounts = lines.Select(line => Round(line.Amount)).ToList();
        return (amounts, [.. lines.Select((line, i) => line.Taxed ? Round(amounts[i] * 0.0625m) : 0m)]);
    }

    private static decimal Round(decimal figure) => decimal.Round(figure, 2, MidpointRounding.AwayFromZero);

    private static string Hundredths(decimal figure) => figure.ToString("0.00", CultureInfo.InvariantCulture);

    private static string Dollars(decimal amount) => "$" + Hundredths(amount);
}
