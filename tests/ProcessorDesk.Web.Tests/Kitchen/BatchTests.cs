using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Formulas;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Kitchen;

public sealed class BatchTests(KitchenFloor shop) : IClassFixture<KitchenFloor>
{
    [Fact]
    public async Task The_page_says_what_comes_next_from_the_mixer_to_the_release()
    {
        var batch = shop.MixedRing(shop.Job("Ann Bower"));
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");
        var page = await desk.Open($"/Kitchen/Batch/{batch}");
        page.Expect("Stuff it");

        page = await page.Press("Stuffed");
        page.Expect("Stuffed: noted.", "Into the smokehouse or oven");
        page = await page.Press("Into the heat");
        page.Expect("Cooking: write the readings down");
        page = await page.Press("Into the chill");
        page.Expect("Chilling: write the readings down", "It still needs:", "Cooking: There are no readings.");
        page = await page.Press("Packed");

        page.Expect("Weigh what came out");
    }

    [Fact]
    public async Task A_mix_that_must_rest_says_until_when()
    {
        shop.Do((records, act) =>
        {
            var ring = records.Products.Single(product => product.Name == "Ring sausage");
            records.Entry(ring).Collection(product => product.Formulas).Load();
            var cure = Proportion.FromPercent(6.25m);
            ring.Reformulate(new FormulaVersion(
                act.Now, Proportion.FromPercent(70m), "Pork trim", true, (Proportion.Zero, Proportion.Zero, Proportion.Zero), Weight.Zero, Weight.Zero,
                [
                    new FormulaIngredient(0, "Seasoning", FormulaBasis.PercentOfBlock, 3.75m, Proportion.Zero, Proportion.Zero, false),
                    new FormulaIngredient(1, "Pink curing salt", FormulaBasis.OuncesPer100Pounds, 4m, cure, Proportion.Zero, false),
                ], restMinutes: 240));
            return Outcome.Done(ring.Id);
        });
        var batch = shop.MixedRing(shop.Job("Bud Cask"));
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");

        var page = await desk.Open($"/Kitchen/Batch/{batch}");

        page.Expect("Rests until Fri 27 Nov, 1:00 PM", "4 h 0 min to go"); // mixed at nine by the shop's clock
        (await desk.Open("/Kitchen")).Expect("Rests until Fri 27 Nov, 1:00 PM");
        (await page.Press("Stuffed")).Expect("Into the smokehouse or oven"); // it happened: it can be noted early
    }

    [Fact]
    public async Task A_step_is_undone_with_a_reason_and_stays_to_be_seen()
    {
        var batch = shop.MixedRing(shop.Job("Cam Dray"));
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");
        var page = await (await desk.Open($"/Kitchen/Batch/{batch}")).Press("Stuffed");

        var refused = await page.Press("Undo it");
        Assert.Contains("Say why it is undone.", refused.Problems);
        var undone = await refused.Send("Undo it", ("Input.UndoBecause", "it was batch 7"));

        undone.Expect("Undone.", "it was batch 7", "Stuff it");
    }

    [Fact]
    public async Task A_hold_is_put_on_by_any_hand_and_released_by_the_manager_with_a_reason()
    {
        var batch = shop.MixedRing(shop.Job("Dot Eames"));
        using var kitchen = await shop.SignIn(StaffRole.Kitchen, "Kitchen");
        using var manager = await shop.SignIn(StaffRole.Manager, "Kitchen");

        var other = await (await kitchen.Open($"/Kitchen/Batch/{batch}")).Send("Put it on hold", ("Input.Reason", "Other"));
        Assert.Contains("Say why it is put on hold.", other.Problems);
        var held = await other.Send("Put it on hold", ("Input.Reason", "RecordIncomplete"), ("Input.Note", "the chart is missing"));
        held.Expect("On hold: record incomplete", "the chart is missing", "Only the manager releases it.");
        (await kitchen.Open("/Kitchen")).Expect("On hold: record incomplete");
        var page = await manager.Open($"/Kitchen/Batch/{batch}");
        (await page.Press("Release this hold")).Expect("Say why the hold is released.");
        var free = await page.Send("Release this hold", ("Input.Because", "found behind the smoker"));

        free.Expect("The hold is released.", "Stuff it");
    }

    [Fact]
    public async Task A_batch_without_meat_is_taken_off_the_plan_and_its_meat_waits_again()
    {
        var job = shop.Job("Eda Finch");
        var (batch, _) = shop.Plan(job);
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");
        var page = await desk.Open($"/Kitchen/Batch/{batch}");

        Assert.Contains("Say why the batch is taken off the plan.", (await page.Press("Take it off the plan")).Problems);
        var off = await page.Send("Take it off the plan", ("Input.OffPlanBecause", "the mixer is broken"));

        off.Expect("Taken off the plan", "the mixer is broken");
        Assert.NotNull((await desk.Open("/Kitchen")).Document.QuerySelector($"#allotment-{shop.Allotment(job, "Ring sausage")}"));
    }

    [Fact]
    public async Task A_fresh_product_is_weighed_and_released_and_its_job_goes_on()
    {
        var batch = shop.MixedHot(shop.Job("Gil Hope"));
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");
        var page = await desk.Open($"/Kitchen/Batch/{batch}");
        page.Expect("Stuff or pack it, then weigh it", "15.00 lb");

        page = await (await page.Follow("Weigh what came out")).Send("Save the weight", ("Input.Gross", "16.80"), ("Input.Tare", "1.90"));
        page.Expect("14.90 lb saved.");
        var released = await (await desk.Open($"/Kitchen/Batch/{batch}")).Press("Release to the owners");

        released.Expect("The batch is released.", "How it went back", "14.90 lb");
        (await desk.Open("/Kitchen")).Expect("Released lately", "14.90 lb");
    }

    [Fact]
    public async Task All_the_meat_in_one_load_leaves_the_other_out()
    {
        var job = shop.Job("Hal Inch");
        var (batch, loads) = shop.Plan(job);
        shop.Draw(loads[0], job, 25.00m);
        shop.Do((records, act) => records.MixLoad(
            new MixOrder(loads[0], Weight.FromPounds(10.71m), new Dictionary<int, (Weight, WeightUnit)> { [0] = (Weight.FromGrams(607.4m), WeightUnit.Gram), [1] = (Weight.FromGrams(40.4m), WeightUnit.Gram) })
            {
                Again = new Dictionary<int, (Weight, WeightUnit)> { [1] = (Weight.FromGrams(40.3m), WeightUnit.Gram) },
            }, false, act));
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");

        var page = await (await desk.Open($"/Kitchen/Batch/{batch}")).Press("All the meat is in: no more loads");

        page.Expect("The mixing is finished.", "Not made: all the meat went into the others", "Stuff it");
    }

    [Theory]
    [InlineData("Sheet")]
    [InlineData("Ticket")]
    public async Task The_papers_are_one_pdf_each_and_there_is_none_of_a_batch_that_is_not_there(string paper)
    {
        var (batch, _) = shop.Plan(shop.Job($"Ida {paper}"));
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");

        var answer = await desk.Client.GetAsync($"/Kitchen/{paper}/{batch}");

        Assert.Equal("application/pdf", answer.Content.Headers.ContentType!.MediaType);
        Assert.Equal(System.Net.HttpStatusCode.NotFound, (await desk.Client.GetAsync($"/Kitchen/{paper}/987654")).StatusCode);
    }
}
