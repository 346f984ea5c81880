using System.Globalization;
using Microsoft.Playwright;
using ProcessorDesk.Browser.Tests.Screens;
using ProcessorDesk.Browser.Tests.Stories;
using ProcessorDesk.Paper.Tests.Rendering;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Browser.Tests;

/// <summary>
/// One owner's two deer from the door to the truck, through the pages alone. Every figure is worked here by hand; blends,
/// losses and prices are the story's own.
/// </summary>
[Collection(InChromium.Name)]
public sealed class StoryTests(Chromium chromium, StoryShop shop) : IClassFixture<StoryShop>
{
    private static readonly decimal[] _nets = [34.62m - 3.10m, 29.48m - 3.10m, 22.06m - 2.86m, 18.75m - 3.10m];

    [Theory]
    [InlineData(1440, true, "Ines Moreau")]
    [InlineData(820, false, "Jonas Vail")]
    [InlineData(390, true, "Petra Holm")]
    public async Task Two_deer_go_from_the_door_to_the_truck(int width, bool script, string owner)
    {
        shop.EmptyLugs();
        var page = await chromium.Window(shop.Address, width, script);
        await SignIn(page, shop.Clerk, "Counter");
        var taken = await TakeIn(page, script, owner);
        await Tickets(taken);
        var job = taken.JobId;

        await SignIn(page, shop.Cutter, "Cutting");
        await Hang(page, $"TW-1-{width}");
        await Cut(page, job, owner, script);
        await Split(page, job);

        var kitchen = new KitchenStory(page, shop, owner, script);
        var pickup = new PickupStory(page, shop, job, owner, script);
        await SignIn(page, shop.Kitchen, "Kitchen");
        await kitchen.MakeWhatIsFresh();
        await pickup.BoxWhatIsFresh();
        await SignIn(page, shop.Clerk, "Pickup");
        await pickup.FetchWhatIsFresh();
        await Owner(page, job, "Ring sausage", "in the kitchen");

        await SignIn(page, shop.Kitchen, "Kitchen");
        await kitchen.MakeWhatIsCured();
        await pickup.BoxWhatIsCured();
        await SignIn(page, shop.Clerk, "Pickup");
        await pickup.FetchTheRest();
        await Owner(page, job, "33.10 lb", "19.60 lb", "14.90 lb", "38.40 lb");
        await page.Context.CloseAsync();
    }

    private static async Task SignIn(IPage page, int staff, string station)
    {
        await page.Context.ClearCookiesAsync();
        await (await DoorScreen.Open(page)).ComeIn(staff, station);
    }

    private static async Task<TakenInScreen> TakeIn(IPage page, bool script, string owner)
    {
        var width = page.ViewportSize!.Width;
        var form = await DropOffScreen.Open(page);
        await form.Owner(owner, "(555) 555-0134");
        await form.Deer(0, $"TW-1-{width}", "128.5");
        await form.AnotherAnimal();
        await form.Deer(1, $"TW-2-{width}", "96.0");
        await form.Choose("Input.Order.Style", "all-grind");
        await form.Ask(0, "Ring sausage", "OwnLean", "25");
        await form.Ask(1, "Summer sausage", "Finished", "20");
        await form.Ask(2, "Hot sausage", "Finished", "15");
        await form.Ask(3, "Plain ground", "Rest", "");
        await form.Type("Input.Deposit.Amount", "50.00");

        // 48 % of field-dressed weight is boneless; usually within 5 % of it, at the extremes within 15 %: Michigan State
        // University Extension, bulletin 01600637.
        var boneless = (128.5m + 96.0m) * 0.48m;
        var outlook = await form.Outlook(script, Tenths(boneless));
        Assert.Equal("107.8", Tenths(boneless));
        Assert.Contains($"{Tenths(boneless)} lb boneless", outlook, StringComparison.Ordinal);
        Assert.Contains($"Usually {Tenths(boneless * 0.95m)} to {Tenths(boneless * 1.05m)} lb", outlook, StringComparison.Ordinal);
        Assert.Contains($"At the extremes {Tenths(boneless * 0.85m)} to {Tenths(boneless * 1.15m)} lb", outlook, StringComparison.Ordinal);
        Assert.Contains("Source: Michigan State University Extension", outlook, StringComparison.Ordinal);
        Assert.Equal(["102.4", "113.1", "91.6", "123.9"], new[] { 0.95m, 1.05m, 0.85m, 1.15m }.Select(part => Tenths(boneless * part)));
        await Pictures.Take(page, $"story-{width}-drop-off");
        return await form.TakeIn();
    }

    private static async Task Tickets(TakenInScreen taken)
    {
        await Pictures.Take(taken.Page, $"story-{taken.Page.ViewportSize!.Width}-taken-in");
        var codes = await taken.Tickets();
        Assert.Equal(2, codes.Count);
        using var tickets = new RenderedPdf(await taken.Paper("Print carcass and part tickets"));
        Assert.Equal(2, tickets.Pages.Count);
        foreach (var page in tickets.Pages)
        {
            PaperChecks.SaysNotForSale(tickets, page);
            PaperChecks.HoldsTheCode(tickets, page, codes[page.Number]);
        }

        using var claim = new RenderedPdf(await taken.Paper("Print the claim ticket"));
        PaperChecks.HoldsTheCode(claim, claim.Pages[0], await taken.Claim());
        Assert.Contains("107.8", claim.Text, StringComparison.Ordinal);
        Assert.Contains("$50.00", claim.Text, StringComparison.Ordinal);
    }

    private static async Task Hang(IPage page, string tag)
    {
        await page.GotoAsync("/Cooler");
        await page.Locator("tr", new PageLocatorOptions { HasText = tag }).GetByRole(AriaRole.Link, new LocatorGetByRoleOptions { Name = "Hang" }).ClickAsync();
        var hang = new DeskScreen(page);
        await hang.Type("Input.Rail", "4");
        await hang.Choose("Input.Kind", "HotHanging");
        await hang.Type("Input.Weight", "118.0");
        await Pictures.Take(page, $"story-{page.ViewportSize!.Width}-hang");
        await hang.Press("Save it");
        await hang.Says("Rail 4", "118.0 lb");
    }

    private async Task Cut(IPage page, int job, string owner, bool script)
    {
        var animals = shop.AnimalsOf(job);
        var sheet = await (await SheetScreen.Open(page, job, owner)).Start();
        var scale = await sheet.WeighIn();
        await scale.Weigh(1, animals[0], "34.62", Hundredths(_nets[0]), script);
        await scale.Weigh(2, animals[0], "39.48", Hundredths(39.48m - 3.10m), script);
        await scale.StrikeLast("Typed wrong");
        scale = await sheet.WeighIn();
        await scale.Weigh(2, animals[0], "29.48", Hundredths(_nets[1]), script);
        await scale.Weigh(3, animals[1], "22.06", Hundredths(_nets[2]), script);
        await scale.Weigh(4, animals[1], "18.75", Hundredths(_nets[3]), script);
        Assert.Equal(["31.52", "26.38", "19.20", "15.65"], _nets.Select(Hundredths));
        await Pictures.Take(page, $"story-{page.ViewportSize!.Width}-weigh-in");

        sheet = await SheetScreen.Open(page, job, owner);
        await sheet.Says("224.50 lb", "− 92.75 lb", Hundredths(128.5m + 96.0m - _nets.Sum()));
        Assert.Equal(1, await page.Locator("tr.struck").CountAsync());
        await Pictures.Take(page, $"story-{page.ViewportSize!.Width}-sheet");
        using var paper = new RenderedPdf(await sheet.Paper("Print the sheet"));
        Assert.Contains(owner, paper.Text, StringComparison.Ordinal);
        Assert.Contains("Ring sausage", paper.Text, StringComparison.Ordinal);
        Assert.Single(QrReading.On(paper, 0, 150, every: true));
        await sheet.Finish();
    }

    private static async Task Split(IPage page, int job)
    {
        var split = await SplitScreen.Open(page, job);
        var lean = _nets.Sum();
        var (summer, hot) = (Round(20m / 0.85m / 1.035m * 0.80m), Round(15m / 1.02m * 0.75m));
        var rest = lean - 25.00m - summer - hot;
        Assert.Equal(("92.75", "18.19", "11.03", "38.53"), (Hundredths(lean), Hundredths(summer), Hundredths(hot), Hundredths(rest)));
        await split.Says("Lean trim weighed 92.75 lb");
        await Expect(split, "Ring sausage", 25.00m, fat: Round(25.00m * 30m / 70m), additions: 1.04m, left: 0.90m);
        await Expect(split, "Summer sausage", summer, fat: Round(summer * 20m / 80m), additions: 1.035m, left: 0.85m);
        await Expect(split, "Hot sausage", hot, fat: Round(hot * 25m / 75m), additions: 1.02m, left: 1m);
        await Expect(split, "Plain ground", rest, fat: 0m, additions: 1m, left: 1m);
        Assert.Equal(["25.00", "10.71", "35.71", "37.14"], (await split.Figures("Ring sausage"))[..4]);

        // 156.25 ppm of a 6.25 % cure is 0.25 % of the block (9 CFR 424.21(c)); a pound is 453.59237 g.
        var most = Math.Floor(35.71m * 453.59237m * 0.0025m * 10m) / 10m;
        Assert.Equal(40.4m, most);
        Assert.Contains($"At most {most.ToString("0.0", CultureInfo.InvariantCulture)} g", await split.Cure("Ring sausage"), StringComparison.Ordinal);
        Assert.DoesNotContain("Outside the published range", await split.Words(), StringComparison.Ordinal);
        await Pictures.Take(page, $"story-{page.ViewportSize!.Width}-split");
        await split.Agree();
    }

    /// <summary>A row of the split: everything behind the lean is worked from printed values.</summary>
    private static async Task Expect(SplitScreen split, string product, decimal lean, decimal fat, decimal additions, decimal left)
    {
        var (block, green) = (lean + fat, Round((lean + fat) * additions));
        Assert.Equal(new[] { lean, fat, block, green, Round(green * left) }.Select(Hundredths), await split.Figures(product));
    }

    private static decimal Round(decimal figure) => decimal.Round(figure, 2, MidpointRounding.AwayFromZero);

    private static string Tenths(decimal pounds) => decimal.Round(pounds, 1, MidpointRounding.AwayFromZero).ToString("0.0", CultureInfo.InvariantCulture);

    private static string Hundredths(decimal pounds) => pounds.ToString("0.00", CultureInfo.InvariantCulture);

    /// <summary>The owner follows at home, on a phone, by the derived link and without signing in.</summary>
    private async Task Owner(IPage page, int job, params string[] words)
    {
        var phone = await chromium.Window(shop.Address, 390);
        var answer = await phone.GotoAsync(shop.OwnersLinkTo(job));
        Assert.Equal(200, answer!.Status);
        Assert.True((await answer.BodyAsync()).Length < 60_000);
        var text = DeskScreen.OneLine(await phone.Locator("body").InnerTextAsync());
        foreach (var word in words)
            Assert.Contains(word, text, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(1, await phone.Locator("svg[role=img]").CountAsync());
        await Pictures.Take(phone, $"story-{page.ViewportSize!.Width}-owner");
        await phone.Context.CloseAsync();
    }
}
