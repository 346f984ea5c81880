using ProcessorDesk.Records;
using ProcessorDesk.Trade.Tickets;
using ProcessorDesk.Web.Tests.Grind;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Pickup;

/// <summary>Boxes and parts are ticked off or scanned, and leave in one hand-over or in several.</summary>
public sealed class HandOverTests(TrimmedShop shop) : IClassFixture<TrimmedShop>
{
    private const string Owner = "Ines Moreau";

    [Fact]
    public async Task What_is_owed_is_paid_and_then_all_of_it_goes_out()
    {
        var job = MadeJob.Boxed(shop);
        using var desk = await shop.SignIn(StaffRole.Clerk, "Pickup");
        var issued = await (await desk.Open($"/Pickup/Job/{job}")).Press("Issue the invoice");

        var refused = await issued.Send("Hand over", [.. All(job), ("HandingOver.To", Owner)]);
        refused.Expect("$498.88 is still owed");
        Assert.Equal(Owner, refused.Form("Hand over").Value("HandingOver.To"));
        Assert.Equal(6, Ticked(refused));
        var paid = await refused.Send("Book it", ("Paying.Amount", "498.88"), ("Paying.Method", "Check"));
        paid.Expect("Payment of $498.88 is booked.", "Balance$0.00");
        var gone = await paid.Send("Hand over", [.. All(job), ("HandingOver.To", Owner)]);

        gone.Expect("Handed over to Ines Moreau.", "All handed over to Ines Moreau", "Box 1: Ring sausage, 20 packs, 33.10 lb", "Antlers, tag TW-1001");
        Assert.NotNull(JobOf(job).HandedOverAt);
    }

    [Fact]
    public async Task Tickets_are_ticked_off_one_after_another_and_what_was_ticked_stays_so()
    {
        var job = MadeJob.Boxed(shop);
        using var desk = await shop.SignIn(StaffRole.Clerk, "Pickup");
        var page = await desk.Open($"/Pickup/Job/{job}");

        foreach (var (code, i) in CodesOf(job).Select((code, i) => (code, i)))
        {
            page = await page.Send("Tick it off", ("HandingOver.Scan", code));
            Assert.Equal(i + 1, Ticked(page));
            Assert.Equal("", page.Form("Hand over").Value("HandingOver.Scan"));
        }

        page.Expect("Antlers, tag TW-1002 is ticked.", "This is everything");
        Assert.Equal(0, shop.Read(records => records.HandOvers.Count(one => one.JobId == job)));
    }

    [Fact]
    public async Task The_enter_of_a_scanner_ticks_off_and_hands_nothing_over()
    {
        var job = MadeJob.Boxed(shop);
        using var desk = await shop.SignIn(StaffRole.Clerk, "Pickup");
        var issued = await (await desk.Open($"/Pickup/Job/{job}")).Press("Issue the invoice");

        var page = await issued.Send("Hand over", ("HandingOver.Scan", CodesOf(job)[0]), ("HandingOver.To", Owner), ("HandingOver.Owing", "true"));

        page.Expect("is ticked.");
        Assert.Equal((1, Owner), (Ticked(page), page.Form("Hand over").Value("HandingOver.To")));
        Assert.Equal(0, shop.Read(records => records.HandOvers.Count(one => one.JobId == job)));
    }

    [Fact]
    public async Task A_ticket_of_another_job_is_refused_in_words_and_the_ticks_stay()
    {
        var (job, other) = (MadeJob.Boxed(shop), MadeJob.Boxed(shop, "Jonas Vail"));
        using var desk = await shop.SignIn(StaffRole.Clerk, "Pickup");
        var one = await (await desk.Open($"/Pickup/Job/{job}")).Send("Tick it off", ("HandingOver.Scan", CodesOf(job)[1]));

        var page = await one.Send("Tick it off", ("HandingOver.Scan", CodesOf(other)[0]));

        Assert.Equal([$"This is box 1 of job {JobOf(other).Number}, Jonas Vail. It does not go out with this job: set it aside."], page.Problems);
        Assert.Equal(1, Ticked(page));
        Assert.Equal(CodesOf(other)[0], page.Form("Hand over").Value("HandingOver.Scan"));
    }

    [Fact]
    public async Task A_ticket_that_is_for_nothing_here_says_what_it_is()
    {
        var job = MadeJob.Boxed(shop);
        var (boxed, parts) = (CodesOf(job)[0], CodesOf(job)[4]);
        using var desk = await shop.SignIn(StaffRole.Clerk, "Pickup");
        var page = await (await desk.Open($"/Pickup/Job/{job}")).Press("Issue the invoice");
        async Task<string> Scan(string typed) => Assert.Single((await page.Send("Tick it off", ("HandingOver.Scan", typed))).Problems);

        Assert.Equal("This is a claim ticket, not the ticket of a box or a part.", await Scan(CodeOf(TicketKind.Claim, job)));
        Assert.Equal("A ticket code has six letters and digits, like A0C-7K2. Type it again.", await Scan("nonsense"));
        var unused = TicketCode.FromNumber(shop.Read(records => records.Tickets.Max(ticket => ticket.Number))).Next().Print();
        Assert.Equal($"No ticket has the code {unused}. Scan it again.", await Scan(unused));
        page = await page.Send(
            "Hand over", ("HandingOver.Scan", ""), ("HandingOver.Boxes", $"{BoxesOf(job)[0]}"), ("HandingOver.Parts", $"{PartsOf(job)[0]}"), ("HandingOver.To", Owner), ("HandingOver.Owing", "true"));
        Assert.Contains("Box 1 left on Fri 27 Nov already", await Scan(boxed), StringComparison.Ordinal);
        Assert.Contains("Antlers, tag TW-1001 was given to Ines Moreau on Fri 27 Nov", await Scan(parts), StringComparison.Ordinal);
        var unpacked = CodesOf(job)[0];
        shop.Write((records, act) => records.UnpackBox(BoxesOf(job)[0], "a pack was torn", act), new Hand(shop.StaffOf(StaffRole.Cutter), "Freezer"));
        Assert.Contains("was made void", await Scan(unpacked), StringComparison.Ordinal);
    }

    [Fact]
    public async Task With_script_a_ticket_fills_its_panel_alone()
    {
        var job = MadeJob.Boxed(shop);
        using var desk = await shop.SignIn(StaffRole.Clerk, "Pickup");
        var page = await desk.Open($"/Pickup/Job/{job}");
        page.Form("Tick it off").Fill("HandingOver.Scan", CodesOf(job)[0]);
        using var request = page.Form("Tick it off").Submission(page.Button("Tick it off"));
        request.Headers.Add("X-Desk-Live", "1");

        var part = await desk.Ask(request);

        Assert.Null(part.Document.QuerySelector("h1"));
        Assert.Contains("Box 1: Ring sausage, 20 packs is ticked.", part.Document.Body!.TextContent, StringComparison.Ordinal);
        Assert.Single(part.Document.QuerySelectorAll("input[name='HandingOver.Boxes'][checked]"));
    }

    [Fact]
    public async Task What_stays_is_said_with_why()
    {
        var job = MadeJob.Agree(shop);
        MadeJob.Make(shop, job, "Ring sausage");
        MadeJob.Box(shop, job, "Ring sausage");
        MadeJob.Make(shop, job, "Hot sausage");
        using var desk = await shop.SignIn(StaffRole.Clerk, "Pickup");

        var page = await desk.Open($"/Pickup/Job/{job}");
        page.Expect(
            "Summer sausage: not begun", "Plain ground: not begun", "Hot sausage: made, not in a box yet", "Box 1 (Ring sausage): still in the freezer, Shelf 3",
            "Antlers, tag TW-1001: still here");
        var ticked = await page.Send("Tick it off", ("HandingOver.Scan", CodesOf(job)[0]));

        Assert.DoesNotContain("still in the freezer", ticked.Text, StringComparison.Ordinal);
        ticked.Expect("Summer sausage: not begun");
    }

    [Fact]
    public async Task Two_hand_overs_are_told_apart_and_each_says_what_was_missing_then()
    {
        var job = MadeJob.Agree(shop);
        MadeJob.Make(shop, job, "Ring sausage");
        MadeJob.Box(shop, job, "Ring sausage");
        using var desk = await shop.SignIn(StaffRole.Clerk, "Pickup");
        var page = await (await desk.Open($"/Pickup/Job/{job}")).Press("Issue the invoice");
        page = await page.Send("Hand over", ("HandingOver.Boxes", $"{BoxesOf(job)[0]}"), ("HandingOver.To", "Kay Moreau"), ("HandingOver.Owing", "true"));
        page.Expect("Handed over to Kay Moreau.", "Owing");
        Assert.Null(JobOf(job).HandedOverAt);
        shop.Clock.Advance(TimeSpan.FromDays(14));
        foreach (var product in new[] { "Summer sausage", "Hot sausage", "Plain ground" })
        {
            MadeJob.Make(shop, job, product);
            MadeJob.Box(shop, job, product);
        }

        shop.Write((records, act) => records.FinishBoxing(job, act), new Hand(shop.StaffOf(StaffRole.Cutter), "Freezer"));
        page = await (await desk.Open($"/Pickup/Job/{job}")).Press("Issue the invoice");
        await page.Send("Hand over", [.. All(job), ("HandingOver.To", Owner), ("HandingOver.Owing", "true")]);
        Assert.NotNull(JobOf(job).HandedOverAt);

        var ids = shop.Read(records => records.HandOvers.Where(one => one.JobId == job).OrderBy(one => one.Id).Select(one => one.Id).ToList());
        var first = await desk.Open($"/Pickup/HandOver/{ids[0]}");
        first.Expect("Handed over to Kay Moreau", "Box 1, 33.10 lb", "Still to come", "Summer sausage: not begun", "Antlers, tag TW-1002: still here", "Lead", "160 °F", "NOT FOR SALE");
        Assert.DoesNotContain("Left before", first.Text, StringComparison.Ordinal);
        var second = await desk.Open($"/Pickup/HandOver/{ids[1]}");
        second.Expect("Handed over to Ines Moreau", "3 boxes73.16 lb", "Left before", "to Kay Moreau", "Box 1, 33.10 lb", "This was everything"); // 19.86 + 14.90 + 38.40
        foreach (var id in ids)
            await IsPdf(desk, $"/Pickup/Summary/{id}");
    }

    [Fact]
    public async Task Meat_on_hold_does_not_leave()
    {
        var job = MadeJob.Boxed(shop);
        using var desk = await shop.SignIn(StaffRole.Clerk, "Pickup");
        var issued = await (await desk.Open($"/Pickup/Job/{job}")).Press("Issue the invoice");
        shop.Write((records, act) =>
        {
            TrimmedJob.AnimalOf(records, job).PutOnHold(HoldReason.DiseaseDetected, null, act.Now, shop.StaffOf(StaffRole.Manager));
            return Outcome.Done();
        });

        (await desk.Open($"/Pickup/Job/{job}")).Expect("On hold: disease detected", "Nothing of it leaves until the manager releases it.");
        var page = await issued.Send("Hand over", [.. All(job), ("HandingOver.To", Owner), ("HandingOver.Owing", "true")]);

        page.Expect("is on hold: disease detected");
        Assert.Equal(0, shop.Read(records => records.HandOvers.Count(one => one.JobId == job)));
    }

    [Fact]
    public async Task A_hold_on_a_batch_is_shown_with_the_job()
    {
        var job = MadeJob.Boxed(shop);
        shop.Write((records, act) => records.HoldBatch(records.MadeOf(job)[0].BatchId!.Value, HoldReason.RecordIncomplete, "the chart is of another day", act), new Hand(shop.StaffOf(StaffRole.Kitchen), "Kitchen"));
        using var desk = await shop.SignIn(StaffRole.Clerk, "Pickup");

        (await desk.Open($"/Pickup/Job/{job}")).Expect("On hold: record incomplete", "the chart is of another day");
    }

    [Fact]
    public async Task A_part_goes_alone_to_whoever_signs_for_it()
    {
        var job = MadeJob.Boxed(shop);
        using var desk = await shop.SignIn(StaffRole.Clerk, "Pickup");
        var page = await desk.Open($"/Pickup/Job/{job}");

        (await page.Press("Give it out")).Expect("Write who takes the part.");
        var given = await page.Send("Give it out", ("Giving.PartTo", "The taxidermist"));

        given.Expect("given to The taxidermist");
        Assert.Equal("The taxidermist", shop.Read(records => records.Parts.First(part => part.Animal.Shares.Any(share => share.JobId == job) && part.GivenAt != null).GivenTo));
    }

    [Fact]
    public async Task A_second_press_hands_nothing_over_twice()
    {
        var job = MadeJob.Boxed(shop);
        using var desk = await shop.SignIn(StaffRole.Clerk, "Pickup");
        var page = await (await desk.Open($"/Pickup/Job/{job}")).Press("Issue the invoice");

        await page.Send("Hand over", [.. All(job), ("HandingOver.To", Owner), ("HandingOver.Owing", "true")]);
        var again = await page.Press("Hand over");

        again.Expect("All handed over");
        Assert.Equal(1, shop.Read(records => records.HandOvers.Count(one => one.JobId == job)));
    }

    [Fact]
    public async Task The_invoice_and_its_credit_are_papers()
    {
        var job = MadeJob.Boxed(shop);
        using var desk = await shop.SignIn(StaffRole.Clerk, "Pickup");
        await (await (await desk.Open($"/Pickup/Job/{job}")).Press("Issue the invoice")).Press("Credit it");

        foreach (var id in shop.Read(records => records.Invoices.Where(one => one.JobId == job).Select(one => one.Id).ToList()))
            await IsPdf(desk, $"/Pickup/Invoice/{id}");
    }

    private static async Task IsPdf(Desk desk, string path)
    {
        using var answer = await desk.Client.GetAsync(new Uri(path, UriKind.Relative));
        Assert.Equal("application/pdf", answer.Content.Headers.ContentType?.MediaType);
        Assert.Equal("%PDF"u8.ToArray(), (await answer.Content.ReadAsByteArrayAsync())[..4]);
    }

    /// <summary>Every box and part that is here, as it is ticked.</summary>
    private (string Name, string Value)[] All(int job) =>
        [.. BoxesOf(job).Select(id => ("HandingOver.Boxes", $"{id}")), .. PartsOf(job).Select(id => ("HandingOver.Parts", $"{id}"))];

    private List<int> BoxesOf(int job) => shop.Read(records => records.GoodsOf(job)).BoxesHere.Select(box => box.Id).ToList();

    private List<int> PartsOf(int job) => shop.Read(records => records.GoodsOf(job)).PartsHere.Select(part => part.Id).ToList();

    /// <summary>Tickets of the boxes here, then of the parts.</summary>
    private List<string> CodesOf(int job)
    {
        var goods = shop.Read(records => records.GoodsOf(job));
        return [.. goods.BoxesHere.Select(box => box.Ticket!.Value.Print()), .. goods.PartsHere.Select(part => part.Ticket!.Value.Print())];
    }

    private string CodeOf(TicketKind kind, int id) => shop.Read(records => records.Tickets.Single(ticket => ticket.Kind == kind && ticket.TargetId == id)).Code.Print();

    private static int Ticked(Screen page) => page.Document.QuerySelectorAll("input[name^='HandingOver.'][type=checkbox][checked]:not([name$=Owing])").Length;

    private Job JobOf(int job) => shop.Read(records => records.Jobs.Single(one => one.Id == job));
}
