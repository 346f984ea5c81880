using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Tests.Harness;
using ProcessorDesk.Web.Tests.Kitchen;
using Xunit;

namespace ProcessorDesk.Web.Tests.Trace;

/// <summary>What a manager does on the day of a bad result: asks, reads, calls, prints.</summary>
public sealed class TracePageTests(KitchenFloor shop) : IClassFixture<KitchenFloor>
{
    [Fact]
    public async Task A_batch_is_traced_from_its_number_with_owners_lugs_and_sums()
    {
        var job = shop.Job("Ann Vane");
        var batch = shop.MixedHot(job);
        var number = shop.Read(records => records.Batches.Single(one => one.Id == batch).Number);
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");

        var page = await desk.Open($"/Trace?q=batch+{number}");

        Assert.Equal($"/Trace/Of/batch/{batch}", page.Path);
        Assert.Equal($"Batch {number}, Hot sausage", page.Heading);
        // 11.03 of meat, 3.68 of fat and 133.4 g, which is 0.29 lb: 15.00 in the mixer.
        page.Expect("Ann Vane", "Not told", "11.03 lb into batch", "20.49 lb still in it", "In the mixer", "15.00 lb", "ask your agency and follow it");
    }

    [Fact]
    public async Task A_ticket_and_a_tag_lead_straight_to_the_trace_and_a_lug_with_several_fillings_asks_which()
    {
        var job = shop.Job("Bo Wick");
        shop.MixedHot(job);
        using var desk = await shop.SignIn(StaffRole.Manager);
        var (code, animal) = shop.Read(records => (
            records.Tickets.Where(ticket => ticket.Kind == TicketKind.Carcass && records.Shares.Any(share => share.JobId == job && share.AnimalId == ticket.TargetId)).OrderBy(ticket => ticket.Number).First().Code.Print(),
            records.Shares.Where(share => share.JobId == job).OrderBy(share => share.AnimalId).Select(share => share.AnimalId).First()));

        Assert.Equal($"/Trace/Of/animal/{animal}", (await desk.Open($"/Trace?q={code}")).Path);

        var lug = shop.Read(records => records.Fillings.Where(filling => filling.JobId == job).Select(filling => filling.Lug.Number).First());
        shop.Write((records, act) =>
        {
            var filling = records.Fillings.Single(one => one.Lug.Number == lug && one.EmptiedAt == null);
            records.Entry(filling).Reference(one => one.Lug).Load();
            filling.Empty(act.Now);
            records.SaveChanges();
            records.Fillings.Add(new Records.Filling(filling.Lug, job, [animal], act.Now));
            return Outcome.Done();
        });
        var choice = await desk.Open($"/Trace?q=lug+{lug}");
        Assert.Equal($"Which one is “lug {lug}”?", choice.Heading);
        Assert.Equal(["in use", "emptied"], choice.Document.QuerySelectorAll(".rooms li").Select(line => line.TextContent.Contains("in use", StringComparison.Ordinal) ? "in use" : "emptied"));
    }

    /// <summary>15.00 mixed, 1.25 left in the machines, 13.50 finished: 0.25 was lost.</summary>
    [Fact]
    public async Task What_stayed_in_the_machines_is_no_finished_weight_on_page_and_sheet()
    {
        var batch = shop.MixedHot(shop.Job("Eda Xan"));
        shop.Do((records, act) => records.WeighFinished(batch, null, Weight.FromPounds(13.50m), Weight.Zero, act));
        shop.Do((records, act) => records.WeighLeft(batch, Weight.FromPounds(1.25m), act));
        using var desk = await shop.SignIn(StaffRole.Manager);

        var page = await desk.Open($"/Trace/Of/batch/{batch}");

        Assert.Equal(
            ["In the mixer 15.00 lb", "Stayed in grinder and stuffer 1.25 lb", "Lost on the way 0.25 lb", "Finished 13.50 lb"],
            page.Document.QuerySelectorAll("#batches ~ article tfoot")[0].QuerySelectorAll("tr").Select(row => $"{row.QuerySelector("th")!.TextContent} {row.QuerySelector("td")!.TextContent}"));
        var sheet = (await PdfText.Of(desk, $"/Trace/Sheet/batch/{batch}")).Split('\n').ToList();
        foreach (var (label, value) in new[] { ("In the mixer", "15.00 lb"), ("Stayed in grinder and stuffer", "1.25 lb"), ("Lost on the way", "0.25 lb"), ("Finished", "13.50 lb") })
            Assert.Contains(sheet, line => line.Contains(label, StringComparison.Ordinal) && line.Contains(value, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_call_is_logged_with_what_came_of_it_and_ticks_the_owner_only_when_told()
    {
        var batch = shop.MixedHot(shop.Job("Cora Yule"));
        using var desk = await shop.SignIn(StaffRole.Manager);
        var page = await desk.Open($"/Trace/Of/batch/{batch}");

        page = await (await page.Follow("Log a call to Cora Yule")).Press("Write it into the log");
        Assert.Equal(["Say what came of the call.", "Write who was spoken to and what was said, or that nobody answered."], page.Problems);
        page = await page.Send("Write it into the log", ("Input.Outcome", "NoAnswer"), ("Input.Words", "rang at noon"));
        page.Expect("The call to Cora Yule is in the log.", "Not told", "No answer", "rang at noon");
        page = await (await page.Follow("Log a call to Cora Yule")).Send("Write it into the log", ("Input.Outcome", "Told"), ("Input.Words", "will wait for the agency"));

        page.Expect("No answer", "will wait for the agency");
        Assert.DoesNotContain("Not told", page.Text, StringComparison.Ordinal);
        var sheet = await PdfText.Of(desk, $"/Trace/Sheet/batch/{batch}");
        Assert.Contains("1 of 1", sheet, StringComparison.Ordinal);
        Assert.Contains("will wait", sheet, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_positive_animal_says_so_and_leads_from_its_job_to_its_trace()
    {
        var job = shop.Job("Dag Zorn");
        shop.MixedHot(job);
        var animal = shop.Read(records => records.Shares.Where(share => share.JobId == job).OrderBy(share => share.AnimalId).Select(share => share.AnimalId).First());
        shop.Do((records, _) =>
        {
            records.Animals.Single(one => one.Id == animal).RecordDiseaseTest(DiseaseTest.Detected, "S 9", null, null);
            return Outcome.Done(animal);
        });
        using var desk = await shop.SignIn(StaffRole.Manager);

        var page = await (await desk.Open($"/Find/Job/{job}")).Follow("Trace where its meat went, and call the owners");

        Assert.Equal($"/Trace/Of/animal/{animal}", page.Path);
        page.Expect("Disease detected", "Dag Zorn");
    }

    [Fact]
    public async Task What_is_not_there_is_not_found()
    {
        using var desk = await shop.SignIn(StaffRole.Manager);

        Assert.Equal("Nothing to trace for “zzzz”", (await desk.Open("/Trace?q=zzzz")).Heading);
        foreach (var address in (string[])["/Trace/Of/batch/999999", "/Trace/Of/nothing/1", "/Trace/Sheet/box/999999", "/Trace/Call/batch/999999/1"])
            Assert.Equal(404, (int)(await desk.Open(address)).Status);
    }
}
