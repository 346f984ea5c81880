using System.Globalization;
using Microsoft.Playwright;
using ProcessorDesk.Browser.Tests.Screens;
using ProcessorDesk.Paper.Tests.Rendering;
using Xunit;

namespace ProcessorDesk.Browser.Tests.Stories;

/// <summary>
/// The agreed split of the two deer is mixed, smoked and weighed. Lugs hold 31.52, 26.38, 19.20 and 15.65 lb. Every figure is worked here;
/// what was weighed is the story's own. A pound is 453.59237 g (NIST Handbook 44, Appendix C); nitrite at most 1/4 oz to 100 lb of meat
/// block, 156.25 ppm (9 CFR 424.21(c)), of a cure of 6.25 %.
/// </summary>
internal sealed class KitchenStory(IPage page, StoryShop shop, string owner, bool script)
{
    private const decimal GramsInPound = 453.59237m;

    /// <summary>Fresh sausage in one load and the plain ground in two: they need no more than their weight.</summary>
    public async Task MakeWhatIsFresh()
    {
        // 11.03 lb of lean with 3.68 lb of pork is a block of 14.71, green 14.71 × 1.02 = 15.00, inside 25 lb: one load. Lugs 1 and 2 are kept for
        // the cured products: ring wants 25.00, summer 18.19; of 57.90 that leaves 14.71.
        var hot = await Plan("Hot sausage", loads: 1);
        var load = await hot.OpenLoad(1);
        await load.Draw(3, "11.03");
        hot = await load.Mix("3.68", cure: null);
        await Weighed(hot, "Hot sausage", "4.00", "18.90");

        // 38.53 lb in two loads: 19.27 and 19.26. What is left: lug 2 holds 14.71 beside the summer sausage's, lug 3 8.17, lug 4 15.65.
        var plain = await Plan("Plain ground", loads: 2);
        Assert.Equal(38.53m, 14.71m + (19.20m - 11.03m) + 15.65m);
        load = await plain.OpenLoad(1);
        await load.Draw(3, "8.17", empties: true);
        await load.Draw(4, "11.10");
        await Pictures.Take(page, $"story-{page.ViewportSize!.Width}-load");
        plain = await load.Mix(fat: null, cure: null);
        load = await plain.OpenLoad(2);
        await load.Draw(2, "14.71");
        // 4.55 lb is in lug 4 by its weigh-in; 0.04 lb dripped.
        await load.Draw(4, "4.51", empties: true);
        plain = await load.Mix(fat: null, cure: null);
        await Weighed(plain, "Plain ground", "4.00", "42.40");
    }

    /// <summary>Ring sausage in two loads of 18.57 and summer sausage in one; cured, rested, cooked and chilled with their readings.</summary>
    public async Task MakeWhatIsCured()
    {
        Assert.Equal(37.14m, 2 * 18.57m);
        var ring = await Plan("Ring sausage", loads: 2);
        Assert.Contains("18.57 lb", await ring.LoadRow(1), StringComparison.Ordinal);
        Assert.Contains("18.57 lb", await ring.LoadRow(2), StringComparison.Ordinal);
        await Sheet(ring);

        // 12.50 lb of lean and 5.36 of pork: 17.86 lb of block.
        var load = await ring.OpenLoad(1);
        await load.Draw(1, "12.50");
        var most = Cure(17.86m);
        Assert.Equal("20.2", most);
        Assert.Contains("20.2 g", await load.CureFor(script, "5.36", "20.2", "17.86 lb"), StringComparison.Ordinal);
        Assert.Contains(Grams(17.86m, 0.0375m), await load.Amounts(), StringComparison.Ordinal);
        // A tenth of a gram more is over: 20.3 × 0.0625 / (17.86 × 453.59237) = 156.61 ppm.
        Assert.Equal("156.61", Ppm(20.3m, 17.86m));
        var refusal = await load.Refused("5.36", "20.3");
        Assert.Contains("156.61 ppm", refusal, StringComparison.Ordinal);
        Assert.Contains("156.25 ppm", refusal, StringComparison.Ordinal);
        Assert.Contains("9 CFR 424.21(c)", refusal, StringComparison.Ordinal);
        await Pictures.Take(page, $"story-{page.ViewportSize!.Width}-cure-refused");
        ring = await load.Mix("5.36", "20.2");

        // The second dripped a little: 12.46 and 5.35 make 17.81 lb, and the cure follows the weighed meat.
        load = await ring.OpenLoad(2);
        await load.Draw(1, "12.46");
        Assert.Equal("20.1", Cure(17.81m));
        Assert.Contains("20.1 g", await load.CureFor(script, "5.35", "20.1", "17.81 lb"), StringComparison.Ordinal);
        ring = await load.Mix("5.35", "20.1");
        var ringId = ring.BatchId;
        await Rests(ringId, "Ring sausage");

        // 18.19 lb of lean and 4.55 of pork: 22.74 lb of block; green 23.54 in one load. Lug 1 has 31.52 − 12.50 − 12.46 = 6.56 left.
        var summer = await Plan("Summer sausage", loads: 1);
        load = await summer.OpenLoad(1);
        await load.Draw(1, "6.52", empties: true);
        await load.Draw(2, "11.67", empties: true);
        Assert.Equal(18.19m, 6.52m + 11.67m);
        Assert.Equal("25.7", Cure(22.74m));
        summer = await load.Mix("4.55", "25.7");
        var summerId = summer.BatchId;

        shop.Clock.Advance(TimeSpan.FromHours(4));
        await Smoke(ringId);
        await Smoke(summerId);
        await Weighed(await BatchScreen.Open(page, ringId), "Ring sausage", "4.00", "37.10");
        await Weighed(await BatchScreen.Open(page, summerId), "Summer sausage", "3.50", "23.10");
    }

    private async Task<BatchScreen> Plan(string product, int loads)
    {
        var batch = await (await KitchenScreen.Open(page)).Plan(product, owner);
        Assert.Equal(loads, await batch.LoadCount());
        return batch;
    }

    /// <summary>The sheet on paper says what the loads get, the cure apart with its limit.</summary>
    private async Task Sheet(BatchScreen ring)
    {
        var paper = await ring.Paper("Batch sheet");
        await Pictures.Keep(paper, $"story-{page.ViewportSize!.Width}-batch-sheet");
        using var sheet = new RenderedPdf(paper);
        // 17.86 and 17.85 lb of block as planned.
        foreach (var words in new[] { owner, "Ring sausage", "17.86", "17.85", Cure(17.86m) + " g", "156.25 ppm", "9 CFR 424.21(c)" })
            Assert.Contains(words, sheet.Text, StringComparison.Ordinal);
    }

    /// <summary>The rest runs on the batch's page and on Today, and four hours later it is over.</summary>
    private async Task Rests(int batch, string product)
    {
        await page.GotoAsync($"/Kitchen/Batch/{batch}");
        var text = DeskScreen.OneLine(await page.Locator("main").InnerTextAsync());
        Assert.Contains("Rests until", text, StringComparison.Ordinal);
        await page.GotoAsync("/Today");
        var today = page.Locator("section[aria-labelledby=resting]");
        await Assertions.Expect(today).ToContainTextAsync(product);
        await Assertions.Expect(today).ToContainTextAsync("Rests until");
        await Pictures.Take(page, $"story-{page.ViewportSize!.Width}-rest");
    }

    /// <summary>
    /// Cooked from 45 to 161 °F in an hour and chilled from 130 to 79 °F in half an hour and to 39 in four hours more: at 160 °F, above 158, the
    /// table asks for no dwell (FSIS-GD-2021-14); chilling option 1 allows 1.5 and 5 hours.
    /// </summary>
    private async Task Smoke(int batch)
    {
        var screen = await (await BatchScreen.Open(page, batch)).Step("Stuffed");
        await screen.Step("Into the heat");
        var from = shop.Clock.GetUtcNow();
        shop.Clock.Advance(TimeSpan.FromHours(1));
        screen = await screen.Readings(batch, "Cooking", Lines(from, (0, 45), (15, 95), (30, 135), (45, 160), (60, 161)));
        await screen.Step("Into the chill");
        shop.Clock.Advance(TimeSpan.FromHours(5));
        screen = await screen.Readings(batch, "Chilling", Lines(from, (60, 161), (90, 130), (120, 79), (180, 65), (240, 52), (300, 44), (360, 39)));
        await screen.Says("meets");
        await Pictures.Take(page, $"story-{page.ViewportSize!.Width}-record");
    }

    private static (string Time, string Degrees)[] Lines(DateTimeOffset from, params (int Minute, int Degrees)[] readings)
    {
        var zone = TimeZoneInfo.FindSystemTimeZoneById("America/Chicago");
        return [.. readings.Select(one => (
            TimeZoneInfo.ConvertTime(from.AddMinutes(one.Minute), zone).ToString("HH:mm", CultureInfo.InvariantCulture), one.Degrees.ToString(CultureInfo.InvariantCulture)))];
    }

    private static async Task Weighed(BatchScreen batch, string product, string tare, string gross)
    {
        batch = await batch.Finished(batch.BatchId, tare, gross);
        var net = decimal.Parse(gross, CultureInfo.InvariantCulture) - decimal.Parse(tare, CultureInfo.InvariantCulture);
        await batch.Says(product, net.ToString("0.00", CultureInfo.InvariantCulture) + " lb");
        await batch.Release();
    }

    /// <summary>4 oz to 100 lb is 1/400 of the block, rounded down to a tenth of a gram.</summary>
    private static string Cure(decimal block) => (Math.Floor(block * GramsInPound / 400m * 10m) / 10m).ToString("0.0", CultureInfo.InvariantCulture);

    /// <summary>Seasoning to the nearest tenth of a gram.</summary>
    private static string Grams(decimal block, decimal part) =>
        decimal.Round(block * GramsInPound * part, 1, MidpointRounding.AwayFromZero).ToString("N1", CultureInfo.InvariantCulture) + " g";

    private static string Ppm(decimal grams, decimal block) =>
        decimal.Round(grams * 0.0625m / (block * GramsInPound) * 1_000_000m, 2, MidpointRounding.AwayFromZero).ToString("0.00", CultureInfo.InvariantCulture);
}
