using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Cutting;

public sealed class SheetTests(ShopUnderTest shop) : IClassFixture<ShopUnderTest>
{
    [Fact]
    public async Task The_list_sorts_jobs_by_what_may_be_cut()
    {
        var (ready, _) = shop.TakeIn("Cal Rowe", 120m);
        var (held, animals) = shop.TakeIn("Dee Marsh", 110m);
        var (started, _) = shop.TakeIn("Eli Stone", 100m);
        shop.Hold(animals[0], HoldReason.DiseaseTest);
        shop.StartCutting(started);
        using var desk = await shop.SignIn(StaffRole.Cutter, "Cutting");

        var page = await desk.Open("/Cutting");

        string Table(string caption) => page.Document.QuerySelectorAll("table").Single(table => table.QuerySelector("caption")!.TextContent == caption).TextContent;
        Assert.Contains("Eli Stone", Table("On the table"), StringComparison.Ordinal);
        Assert.Contains("Cal Rowe", Table("Ready, in this order"), StringComparison.Ordinal);
        Assert.DoesNotContain("Dee Marsh", Table("Ready, in this order"), StringComparison.Ordinal);
        Assert.Contains("On hold: waiting for the disease test.", Table("Not yet"), StringComparison.Ordinal);
        Assert.NotEqual(ready, held);
    }

    [Fact]
    public async Task A_held_animal_is_not_started_and_the_reason_is_said()
    {
        var (job, animals) = shop.TakeIn("Ada Fenn", 128.5m);
        using var desk = await shop.SignIn(StaffRole.Cutter, "Cutting");
        var sheet = await desk.Open($"/Cutting/Sheet/{job}");
        shop.Hold(animals[0], HoldReason.DiseaseTest);

        var refused = await sheet.Press("Start cutting");

        var tag = shop.TagOf(animals[0]);
        Assert.Equal([$"Animal with tag {tag} is on hold: waiting for the disease test. The manager releases it."], refused.Problems);
        refused.Expect($"Tag {tag}: waiting for the disease test.");
        Assert.Null(shop.Read(records => records.Jobs.Single(one => one.Id == job).CuttingStartedAt));
    }

    [Fact]
    public async Task Shares_that_do_not_come_to_one_stop_the_knife()
    {
        var (job, animals) = shop.TakeIn("Ada Fenn", 128.5m);
        var half = shop.TakeIn("Bo Vance");
        shop.Write((records, act) =>
        {
            var animal = new Animal(Species.Beef, ArrivalState.Skinned, act.Now);
            animal.Identify("B-1", null, null, null, null);
            animal.ShareWith(records.Jobs.Single(one => one.Id == half.Job), Ratio.Of(1, 2), Portion.Side);
            records.Animals.Add(animal);
            return Outcome.Done();
        });
        using var desk = await shop.SignIn(StaffRole.Cutter, "Cutting");

        var refused = await (await desk.Open($"/Cutting/Sheet/{half.Job}")).Press("Start cutting");

        Assert.Equal(["The shares of the animal with tag B-1 come to 1/2, not to 1. Settle them at the counter before the first knife."], refused.Problems);
        Assert.NotEmpty(animals);
        (await (await desk.Open($"/Cutting/Sheet/{job}")).Press("Start cutting")).Expect("Cutting has started.");
    }

    [Fact]
    public async Task The_sheet_says_the_cuts_in_large_words_and_what_goes_to_the_grind()
    {
        var (job, _) = shop.TakeIn("Ada Fenn", 128.5m);
        using var desk = await shop.SignIn(StaffRole.Cutter, "Cutting");

        var sheet = await desk.Open($"/Cutting/Sheet/{job}");

        sheet.Expect("Sheet revision 1", "Backstrap (loin)", "Steaks, 3/4 in", "4 to a pack", "Plain ground: the rest", "Promised Mon 30 Nov");
    }

    [Fact]
    public async Task A_tick_says_who_and_when_and_can_be_taken_away()
    {
        var (job, animals) = shop.TakeIn("Ada Fenn", 128.5m);
        shop.StartCutting(job);
        using var desk = await shop.SignIn(StaffRole.Cutter, "Cutting");
        var sheet = await desk.Open($"/Cutting/Sheet/{job}");

        sheet = await sheet.Press("Glands and lymph nodes out");

        var tick = Assert.Single(shop.Read(records => records.ChecklistTicks.Where(one => one.AnimalId == animals[0]).ToList()));
        Assert.Equal(("glands", shop.StaffOf(StaffRole.Cutter)), (tick.Item, tick.ById));
        var pressed = sheet.Document.QuerySelectorAll("button[aria-pressed=true]").Single();
        Assert.Contains("Fri 27 Nov, ", pressed.TextContent, StringComparison.Ordinal);
        await sheet.Press(pressed.TextContent.Trim());
        Assert.Empty(shop.Read(records => records.ChecklistTicks.Where(one => one.AnimalId == animals[0]).ToList()));
    }

    [Fact]
    public async Task The_balance_of_deer_is_by_difference_and_shows_what_is_published()
    {
        var (job, _) = shop.TakeIn("Ada Fenn", 128.5m, 96.0m);
        shop.StartCutting(job);
        Weigh(job, WeighInKind.LeanTrim, 92.75m);
        using var desk = await shop.SignIn(StaffRole.Cutter, "Cutting");

        var sheet = await desk.Open($"/Cutting/Sheet/{job}");

        // 128.50 + 96.00 = 224.50 came in; 224.50 - 92.75 = 131.75 is left.
        sheet.Expect("224.50 lb", "− 92.75 lb", "131.75 lb", "Cuts and lean to expect: 107.8 lb");
        Assert.DoesNotContain("If it were finished now", sheet.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Far_too_little_lean_is_said_while_the_animal_is_on_the_table()
    {
        var (job, _) = shop.TakeIn("Ada Fenn", 128.5m, 96.0m);
        shop.StartCutting(job);
        Weigh(job, WeighInKind.LeanTrim, 31.52m);
        using var desk = await shop.SignIn(StaffRole.Cutter, "Cutting");

        var sheet = await desk.Open($"/Cutting/Sheet/{job}");

        sheet.Expect("If it were finished now", "below the published range");
    }

    [Fact]
    public async Task Every_pound_of_a_hog_is_held_against_the_shops_tolerance()
    {
        var (job, _) = shop.TakeIn("Flo Grant");
        shop.Write((records, act) =>
        {
            var animal = new Animal(Species.Hog, ArrivalState.Skinned, act.Now);
            animal.Identify("H-1", null, null, null, null);
            animal.ShareWith(records.Jobs.Single(one => one.Id == job), Ratio.One, Portion.Whole);
            records.Animals.Add(animal);
            records.SaveChanges();
            records.WeighIns.Add(WeighIn.OfAnimal(WeighInKind.HotHanging, animal.Id, Weight.FromPounds(180m), new Reading("rail", ScaleDivision.HundredthPound), act.Now, shop.StaffOf(StaffRole.Cutter)));
            return Outcome.Done();
        });
        shop.StartCutting(job);
        Weigh(job, WeighInKind.CutPack, 120m);
        Weigh(job, WeighInKind.Bone, 40m);
        using var desk = await shop.SignIn(StaffRole.Cutter, "Cutting");

        var sheet = await desk.Open($"/Cutting/Sheet/{job}");

        // 180 - 120 - 40 = 20 lb is missing; 5 % of 180 is 9 lb.
        sheet.Expect("Not accounted for", "20.00 lb of 180.00 lb is not accounted for; 5 % is allowed.");
    }

    [Fact]
    public async Task Finishing_sends_the_trim_on_and_can_be_taken_back()
    {
        var (job, _) = shop.TakeIn("Ada Fenn", 128.5m);
        shop.StartCutting(job);
        using var desk = await shop.SignIn(StaffRole.Cutter, "Cutting");

        var sheet = await (await desk.Open($"/Cutting/Sheet/{job}")).Press("Finish cutting");
        sheet.Expect("Cutting is finished.");
        Assert.NotNull(shop.Read(records => records.Jobs.Single(one => one.Id == job).CuttingDoneAt));
        Assert.DoesNotContain(sheet.Document.QuerySelectorAll("a"), link => link.TextContent == "Weigh in");

        await sheet.Press("Back to the table");
        Assert.Null(shop.Read(records => records.Jobs.Single(one => one.Id == job).CuttingDoneAt));
    }

    [Fact]
    public async Task An_emptied_lug_is_free_for_the_next_job()
    {
        var (job, _) = shop.TakeIn("Ada Fenn", 128.5m);
        var (next, _) = shop.TakeIn("Bo Vance", 96m);
        var lug = shop.AddLug(3.10m);
        shop.StartCutting(job);
        shop.StartCutting(next);
        using var desk = await shop.SignIn(StaffRole.Cutter, "Cutting");
        await (await desk.Open($"/Cutting/WeighIn/{job}")).Send("Save the weight", ("Input.Lug", lug), ("Input.Gross", "20.10"));

        await (await desk.Open($"/Cutting/Sheet/{job}")).Press($"Emptied lug {lug}");
        await (await desk.Open($"/Cutting/WeighIn/{next}")).Send("Save the weight", ("Input.Lug", lug), ("Input.Gross", "21.10"));

        Assert.Equal(Weight.FromPounds(20.10m - 3.10m), shop.WeightsOf(job).Lean);
        Assert.Equal(Weight.FromPounds(21.10m - 3.10m), shop.WeightsOf(next).Lean);
    }

    [Fact]
    public async Task Only_cutters_and_the_manager_open_the_sheet()
    {
        var (job, _) = shop.TakeIn("Ada Fenn", 128.5m);
        using var desk = await shop.SignIn(StaffRole.Clerk);

        var page = await desk.Open($"/Cutting/Sheet/{job}");

        Assert.Equal(System.Net.HttpStatusCode.Forbidden, page.Status);
    }

    private void Weigh(int job, WeighInKind kind, decimal pounds) => shop.Write((records, act) =>
    {
        records.WeighIns.Add(WeighIn.OfJob(
            kind, job, null, Weight.FromPounds(pounds), Weight.Zero, new Reading("bench", ScaleDivision.HundredthPound), act.Now, shop.StaffOf(StaffRole.Cutter)));
        return Outcome.Done();
    });
}
