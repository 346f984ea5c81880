using Microsoft.Playwright;
using ProcessorDesk.Browser.Tests.Screens;
using Xunit;
using static ProcessorDesk.Browser.Tests.KitchenDay.DayNotes;

namespace ProcessorDesk.Browser.Tests.KitchenDay;

/// <summary>What goes wrong that day: a lug that is another owner's, a power cut in the middle of a load, a log that fails.</summary>
/// <param name="page">The kitchen's tablet.</param>
/// <param name="office">The manager's own window.</param>
internal sealed class DayIncidents(IPage page, IPage office, DayShop shop, DayNotes notes, DayEyes eyes, IReadOnlyDictionary<int, string> tickets)
{
    /// <summary>The scanned lug is refused aloud; its meat is in the mixer all the same. The batch is held until its owners are told.</summary>
    public async Task WrongLug(DayBatch batch, int number, LoadScreen load)
    {
        var lug = shop.Read(records => records.Fillings.Where(filling => filling.Job.Owner.Name == DayOwners.Wronged).Select(filling => filling.Lug.Number).Single());
        var said = await load.RefusesDraw(tickets[lug], "1.20");
        Assert.Contains($"Lug {lug} is another owner's", said, StringComparison.Ordinal);
        Assert.Contains("Set it aside.", said, StringComparison.Ordinal);
        await eyes.Look("wrong lug refused");
        Assert.Equal(0, shop.Read(records => records.Draws.Count(draw => draw.Filling.Lug.Number == lug)));

        await load.AlreadyIn(KitchenDayTests.Mistake);
        notes.Draws.Add(new DrawNote(lug, DayOwners.Wronged, batch.Loads[number - 1], 1.20m, 0m, false));
        var own = (await load.Wants())[0].Lugs[0].Number;
        Assert.Contains("on hold", await load.RefusesDraw(tickets[own], "5.00"), StringComparison.OrdinalIgnoreCase);
        var screen = await BatchScreen.Open(page, batch.Id);
        await screen.Says("On hold: ", "Whose meat is touched", DayOwners.Mistaken, DayOwners.Wronged, "no place in this batch", "Only the manager releases it.");
        await eyes.Look("batch on hold");

        var manager = await BatchScreen.Open(office, batch.Id);
        await manager.Type("Input.Because", "Both owners were told by telephone at six and agree");
        await manager.Press("Release this hold");
        await manager.Says("The hold is released.");
        screen = await BatchScreen.Open(page, batch.Id);
        await screen.OpenLoad(number);
    }

    /// <summary>The meat is in and the form half typed when the power fails. The program is started again; the tablet never left its page.</summary>
    public async Task PowerCut(DayBatch batch, int number, LoadScreen load)
    {
        var drawn = notes.Draws.Where(draw => draw.Load == batch.Loads[number - 1]).ToList();
        var fat = Hundredths((await load.PlannedFat())!.Value);
        await load.TypeFat(fat);

        shop.Cut();
        await shop.Start();

        Assert.Equal(fat, await load.Field("Mix.Fat").InputValueAsync());
        // What was drawn before is on the disk, lug by lug.
        await office.GotoAsync(new Uri(page.Url).PathAndQuery);
        await new DeskScreen(office).Says([.. drawn.Select(draw => $"{Hundredths(draw.Pounds)} lb")]);
    }

    /// <summary>
    /// The record does not meet, so there is no release. By the guidance the page gives: the owners are told, it is worked again by guidance in writing, and the
    /// manager writes down whose.
    /// </summary>
    public async Task LogThatFails(DayBatch batch)
    {
        var screen = await BatchScreen.Open(page, batch.Id);
        await screen.Says("Cooking: does not meet", "Cooking: what can be done", "Not yet. It lacks:", "FSIS-GD-2021-14", "Work it again by guidance in writing");
        Assert.Equal(0, await screen.Button("Release to the owners").CountAsync());
        await eyes.Look("batch that does not meet");
        var ending = await EndingScreen.Open(screen);
        await eyes.Look("what is done about it");
        var today = TimeZoneInfo.ConvertTime(shop.Clock.GetUtcNow(), TimeZoneInfo.FindSystemTimeZoneById("America/Chicago")).ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
        await ending.WriteDown("OwnersTold", null, "Kit Hollow", today, "By telephone, that it came out too early and goes in again");
        Assert.Equal(0, await (await BatchScreen.Open(page, batch.Id)).Button("Release to the owners").CountAsync());

        var manager = await EndingScreen.Open(await BatchScreen.Open(office, batch.Id));
        await manager.WriteDown("Reworked", "Cooking", "Mona Hart", today, "Our written guidance on undercooked links, second log in the red folder");
        await (await BatchScreen.Open(page, batch.Id)).Says("What was done about it", "Reworked by written guidance", "The record is complete");
    }
}
