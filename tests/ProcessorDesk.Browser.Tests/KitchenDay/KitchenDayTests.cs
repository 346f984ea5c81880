using Microsoft.Playwright;
using ProcessorDesk.Browser.Tests.Screens;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Tests.Durability;
using Xunit;
using Xunit.Abstractions;

namespace ProcessorDesk.Browser.Tests.KitchenDay;

/// <summary>
/// A day in the kitchen at a tablet: 25 owners' deer, nine products, own and pooled, one animal on hold, milk in one product, two full mixers of another;
/// with what goes wrong on such a day. At its end every pound is accounted for.
/// </summary>
[Collection(InChromium.Name)]
public sealed class KitchenDayTests(Chromium chromium, ITestOutputHelper output)
{
    public const string Mistake = "The lugs stood side by side";

    private const int Tablet = 820;

    [Fact]
    [Trait("Tier", "Long")]
    public async Task At_the_end_of_a_kitchen_day_every_pound_of_every_owner_is_accounted_for()
    {
        using var shop = new DayShop();
        DayCast.Bring(shop);
        var tickets = DayCast.TicketsOfLugs(shop);
        var address = await shop.Start();
        var (page, office) = (await chromium.Window(address, Tablet), await chromium.Window(address));
        var (eyes, officeEyes) = (new DayEyes(page), new DayEyes(office));
        await (await DoorScreen.Open(page)).ComeIn(shop.Kitchen, "Kitchen");
        await (await DoorScreen.Open(office)).ComeIn(shop.Manager, "Kitchen");

        await DayMorning.Plan(page, eyes, shop.Read(records => records.Jobs.Select(job => new { job.Owner.Name, job.Number }).ToDictionary(job => job.Name, job => job.Number)));
        var batches = shop.Read(DayBatch.All);
        var notes = new DayNotes();
        var incidents = new DayIncidents(page, office, shop, notes, eyes, tickets);
        var hand = new DayHand(page, shop, notes, eyes, tickets)
        {
            BeforeDrawing = (batch, number, load) => batch is { IsPooled: false, Product.Name: DayGoods.Rings } && number == 1 ? incidents.WrongLug(batch, number, load) : Task.CompletedTask,
            BeforeMixing = (batch, number, load) => batch is { IsPooled: true, Product.Name: DayGoods.Hot } && number == 1 ? incidents.PowerCut(batch, number, load) : Task.CompletedTask,
        };
        var smokehouse = new DaySmokehouse(page, shop, notes, eyes);
        foreach (var batch in batches)
        {
            await hand.Fill(batch);
            if (batch.Product.IsHeated)
                continue;
            await smokehouse.Weigh(batch);
            if (batch.Product.Kind == ProcessKind.Dried)
                await ReleaseDried(office, officeEyes, smokehouse, batch);
            else
                await smokehouse.Release(batch);
        }

        foreach (var run in batches.Where(batch => batch.Product.IsHeated).GroupBy(batch => batch.Product.Kind == ProcessKind.Fermented).OrderBy(run => run.Key))
        {
            await smokehouse.Run([.. run]);
            foreach (var batch in run)
            {
                await smokehouse.Weigh(batch, loadByLoad: batch is { IsPooled: true, Product.Name: DayGoods.Rings });
                if (batch.Owners[0] == DayOwners.TooEarly)
                    await incidents.LogThatFails(batch);
                await smokehouse.Release(batch);
            }
        }

        shop.Read(records => Close(records, notes, batches));
        Assert.Empty(eyes.Faults().Concat(officeEyes.Faults()));
        await page.Context.CloseAsync();
        await office.Context.CloseAsync();
    }

    /// <summary>What is dried is outside the tables: the manager names the shop's own process.</summary>
    private static async Task ReleaseDried(IPage office, DayEyes eyes, DaySmokehouse smokehouse, DayBatch batch)
    {
        var manager = await BatchScreen.Open(office, batch.Id);
        await eyes.Look("dried batch to be released by the manager");
        await manager.Release("Our jerky process, validated, 4 March");
        await smokehouse.Close(batch);
    }

    private int Close(RecordsContext records, DayNotes notes, IReadOnlyList<DayBatch> batches)
    {
        FileCheck.Holds(records);
        Assert.Equal((25, 9, 24), (DayOwners.All.Count, batches.Select(batch => batch.Product.Name).Distinct().Count(), batches.SelectMany(batch => batch.Owners).Distinct().Count()));
        DayShares.AreKeptApart(records, batches);
        var owners = DayOwners.All.Select(owner => DayAccounts.OfOwner(records, notes, owner)).ToList();
        output.WriteLine($"{DayAccounts.Print(owners.Sum(one => one.In))} of lean: {DayAccounts.Print(owners.Sum(one => one.Drawn))} drawn, {DayAccounts.Print(owners.Sum(one => one.Drip))} thaw and drip, {DayAccounts.Print(owners.Sum(one => one.Still))} in lugs");
        foreach (var batch in batches)
        {
            var (into, finished, left, loss) = DayAccounts.OfBatch(records, notes, batch);
            DayShares.SumUp(records, notes, batch);
            DayAccounts.LotsOf(records, batch);
            var cure = DayAccounts.CureOf(records, batch);
            Assert.All(cure, ppm => Assert.True(batch.Product.IsCured ? ppm is > 150m and <= 156.25m : ppm == 0m, $"Batch {batch.Number}: {ppm} ppm"));
            output.WriteLine(FormattableString.Invariant($"{batch.Number} {batch.Product.Name}, {(batch.IsPooled ? "pooled" : batch.Owners[0])}: {DayAccounts.Print(into)} mixed, {DayAccounts.Print(finished)} finished, {DayAccounts.Print(left)} left, {DayAccounts.Print(loss)} lost; {string.Join(", ", cure.Select(ppm => ppm.ToString("0.00", System.Globalization.CultureInfo.InvariantCulture)))} ppm"));
        }

        // Of the lean that was drawn nothing is in a batch that is not over, and all that waits is the held and the left.
        Assert.All(batches, batch => Assert.NotNull(records.Batches.Single(one => one.Id == batch.Id).ReleasedAt));
        return batches.Count;
    }
}
