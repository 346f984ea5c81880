using System.Globalization;
using Microsoft.Playwright;
using ProcessorDesk.Browser.Tests.Screens;
using Xunit;
using static ProcessorDesk.Browser.Tests.KitchenDay.DayNotes;

namespace ProcessorDesk.Browser.Tests.KitchenDay;

/// <summary>The kitchen hand at the mixer: opens each load, scans the lugs it wants, weighs fat, seasoning and cure, and writes a notebook of its own.</summary>
internal sealed class DayHand(IPage page, DayShop shop, DayNotes notes, DayEyes eyes, IReadOnlyDictionary<int, string> tickets)
{
    /// <summary>What happens at a load before its meat is drawn; by batch and the load's number.</summary>
    public Func<DayBatch, int, LoadScreen, Task>? BeforeDrawing { get; set; }

    /// <summary>The same when its meat is in, before it is mixed.</summary>
    public Func<DayBatch, int, LoadScreen, Task>? BeforeMixing { get; set; }

    /// <summary>Draws and mixes all loads of a batch.</summary>
    public async Task Fill(DayBatch batch)
    {
        for (var number = 1; number <= batch.Loads.Count; number++)
        {
            var screen = await BatchScreen.Open(page, batch.Id);
            await eyes.Look("batch to be drawn");
            Assert.Equal(batch.Loads.Count, await screen.LoadCount());
            var load = await screen.OpenLoad(number);
            if (BeforeDrawing is not null)
                await BeforeDrawing(batch, number, load);
            await eyes.Look("load to be drawn");
            await Draw(batch.Loads[number - 1], load);
            await eyes.Look(batch.Product.IsCured ? "cured load to be mixed" : "load to be mixed");
            if (BeforeMixing is not null)
                await BeforeMixing(batch, number, load);
            await Mix(batch, number, load);
        }

        await eyes.Look("batch that is mixed");
    }

    /// <summary>What the load wants, out of the lugs the page names. A lug that gives all it has drips a little, and is empty then.</summary>
    private async Task Draw(int loadId, LoadScreen load)
    {
        foreach (var wanted in await load.Wants())
        {
            var still = wanted.Still;
            foreach (var (lug, left) in wanted.Lugs.TakeWhile(_ => still > 0m))
            {
                var isLast = left <= still;
                var drip = isLast ? 0.01m * (1 + lug % 4) : 0m;
                var pounds = Math.Min(still, left) - drip;
                await load.Draw(lug, Hundredths(pounds), isLast, scan: lug % 3 == 0 ? null : tickets[lug]);
                notes.Draws.Add(new DrawNote(lug, wanted.Owner, loadId, pounds, drip, isLast));
                still = Math.Max(0m, still - left);
                shop.Clock.PassMinutes(1);
            }
        }
    }

    private async Task Mix(DayBatch batch, int number, LoadScreen load)
    {
        var (loadId, product) = (batch.Loads[number - 1], batch.Product);
        var fat = await load.PlannedFat();
        Assert.Equal(product.Fat is null, fat is null);
        var block = notes.DrawnInto(loadId) + (fat ?? 0m);
        decimal? cure = product.IsCured ? CureFor(block) : null;
        await load.TypeMix(fat is null ? null : Hundredths(fat.Value), cure is null ? null : Tenths(cure.Value), $"{Hundredths(block)} lb");
        var asked = product.Seasoning.ToDictionary(line => line.Name, line => GramsFor(block, line.Percent));
        Assert.Equal(asked.ToDictionary(line => line.Key, line => Tenths(line.Value) + " g"), await load.Others());
        if (product.Name == DayGoods.Cheddar)
        {
            // One by one, each as its bowl was weighed, instead of "as asked".
            foreach (var (name, grams) in asked)
                await load.Weigh(name, Tenths(grams));
        }

        // The bag at the front runs low: the second load's cure comes out of the next lot, and another hand weighs it again.
        if (product.IsCured && number == 2)
        {
            await load.FromLot("Lot of the pink curing salt", "CU-2");
            await load.Type("Mix.AgainBy", "MH");
        }

        notes.Mixes.Add(new MixNote(batch.Id, loadId, fat ?? 0m, cure, asked.Values.Sum() + (cure ?? 0m)));
        await load.Mix(fat is null ? null : Hundredths(fat.Value), cure is null ? null : Tenths(cure.Value));
        shop.Clock.PassMinutes(6);
    }

    private static string Tenths(decimal grams) => grams.ToString("#,0.0", CultureInfo.InvariantCulture);
}
