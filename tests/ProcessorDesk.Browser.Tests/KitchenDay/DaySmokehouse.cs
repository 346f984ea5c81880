using System.Globalization;
using Microsoft.Playwright;
using ProcessorDesk.Browser.Tests.Screens;
using ProcessorDesk.Records;
using static ProcessorDesk.Browser.Tests.KitchenDay.DayNotes;

namespace ProcessorDesk.Browser.Tests.KitchenDay;

/// <summary>
/// Stuffing, ripening, heat and chill with their logs, and the scale behind them. 160 °F asks for no dwell, 140 °F for 12 minutes (FSIS-GD-2021-14);
/// chilling option 1 allows 1.5 and 5 hours; ripening below 100 °F may take 1,000 degree-hours above 60 °F to pH 5.3.
/// </summary>
internal sealed class DaySmokehouse(IPage page, DayShop shop, DayNotes notes, DayEyes eyes)
{
    private static readonly (int Minute, decimal Degrees)[] _cooked = [(0, 45), (15, 95), (30, 135), (45, 160), (60, 161)];

    /// <summary>Six or seven minutes at 140 °F, where the table asks for twelve.</summary>
    private static readonly (int Minute, decimal Degrees)[] _tooEarly = [(0, 45), (15, 95), (30, 130), (45, 140), (50, 140.5m), (55, 138)];

    private static readonly (int Minute, decimal Degrees)[] _chilled = [(60, 161), (90, 130), (120, 79), (180, 65), (240, 52), (300, 44), (360, 39)];

    /// <summary>All that goes through together, from the stuffer to the last reading of the chilling.</summary>
    public async Task Run(IReadOnlyList<DayBatch> batches)
    {
        if (batches.Any(batch => batch.Product.Kind != ProcessKind.Fermented))
        {
            await (await BatchScreen.Open(page, batches[0].Id)).Says("Rests until");
            shop.Clock.Pass(TimeSpan.FromHours(4));
        }

        foreach (var batch in batches)
            await (await BatchScreen.Open(page, batch.Id)).Step("Stuffed", [.. batch.Loads.Select(load => Pieces(notes.MixedIn(load)))]);
        if (batches.Any(batch => batch.Product.Kind == ProcessKind.Fermented))
            await Ripen(batches);
        foreach (var batch in batches)
            await (await BatchScreen.Open(page, batch.Id)).Step("Into the heat");
        var from = shop.Clock.GetUtcNow();
        shop.Clock.PassMinutes(60);
        foreach (var batch in batches)
        {
            var screen = await BatchScreen.Open(page, batch.Id);
            await screen.Readings(batch.Id, "Cooking", Lines(from, batch.Owners[0] == DayOwners.TooEarly ? _tooEarly : _cooked));
            await screen.Step("Into the chill");
        }

        shop.Clock.Pass(TimeSpan.FromHours(5));
        foreach (var batch in batches)
        {
            var screen = await BatchScreen.Open(page, batch.Id);
            await screen.Readings(batch.Id, "Chilling", Lines(from, _chilled));
            await screen.Says("Chilling: meets the cooling option", batch.Owners[0] == DayOwners.TooEarly ? "Cooking: does not meet" : "Cooking: meets the table row");
            await eyes.Look(batch.Owners[0] == DayOwners.TooEarly ? "log that fails" : "log that meets");
        }
    }

    /// <summary>The finished weight, of each load alone where the batch is one whose loads are to be told apart; what stayed in the machines with the first.</summary>
    public async Task Weigh(DayBatch batch, bool loadByLoad = false)
    {
        var left = batch.Product.Casing is null ? 0.45m : 0.90m;
        for (var i = 0; i < (loadByLoad ? batch.Loads.Count : 1); i++)
        {
            var stays = i == 0 ? left : 0m;
            var mixed = loadByLoad ? notes.MixedIn(batch.Loads[i]) : notes.MixedIn(batch);
            var net = decimal.Round((mixed - stays) * (100m - batch.Product.Loses) / 100m, 2);
            int? pieces = batch.Product.Casing is null ? null : Pieces(mixed);
            await (await BatchScreen.Open(page, batch.Id)).Finished(
                batch.Id, "4.00", Hundredths(net + 4m), pieces, stays == 0m ? null : Hundredths(stays), loadByLoad ? $"Load {i + 1}" : "together");
            notes.Finished.Add(new FinishedNote(batch.Id, loadByLoad ? batch.Loads[i] : null, net, pieces, stays));
        }

        await eyes.Look("batch to be released");
        shop.Clock.PassMinutes(2);
    }

    public async Task Release(DayBatch batch)
    {
        await (await BatchScreen.Open(page, batch.Id)).Release();
        await Close(batch);
    }

    /// <summary>Notes where its weight went, as the page says.</summary>
    public async Task Close(DayBatch batch)
    {
        notes.Balances[batch.Id] = await (await BatchScreen.Open(page, batch.Id)).Balance();
        await eyes.Look("batch that is released");
    }

    /// <summary>Twelve hours at 95 °F: 35 degrees above 60 make 420 degree-hours.</summary>
    private async Task Ripen(IReadOnlyList<DayBatch> batches)
    {
        var from = shop.Clock.GetUtcNow();
        shop.Clock.Pass(TimeSpan.FromHours(12));
        foreach (var batch in batches)
        {
            var screen = await (await BatchScreen.Open(page, batch.Id)).Readings(
                batch.Id, "Fermenting", Lines(from, [(0, 95), (240, 95), (480, 95), (720, 95)]), new Dictionary<int, string> { [1] = "5.7", [3] = "5.1" });
            await screen.Says("Fermenting: meets the degree-hours");
        }
    }

    private static int Pieces(decimal pounds) => (int)Math.Ceiling(pounds / 1.25m);

    private static (string Time, string Degrees)[] Lines(DateTimeOffset from, params (int Minute, decimal Degrees)[] readings)
    {
        var zone = TimeZoneInfo.FindSystemTimeZoneById("America/Chicago");
        return [.. readings.Select(one => (
            TimeZoneInfo.ConvertTime(from.AddMinutes(one.Minute), zone).ToString("HH:mm", CultureInfo.InvariantCulture), one.Degrees.ToString(CultureInfo.InvariantCulture)))];
    }
}
