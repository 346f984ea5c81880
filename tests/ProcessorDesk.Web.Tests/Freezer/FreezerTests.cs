using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Tickets;
using ProcessorDesk.Web.Tests.Grind;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Freezer;

/// <summary>Packs into boxes. 14.90 lb of hot and 33.10 lb of ring sausage are made.</summary>
public sealed class FreezerTests(TrimmedShop shop) : IClassFixture<TrimmedShop>
{
    [Fact]
    public async Task Packs_are_counted_and_weighed_into_a_box_with_a_place_and_a_ticket()
    {
        var job = HotAndRing();
        using var desk = await shop.SignIn(StaffRole.Cutter, "Freezer");
        var page = await desk.Open($"/Freezer/Job/{job}");
        page.Expect("Ring sausage", "33.10 lb", "14.90 lb", "Summer sausage", "not begun");

        page = await page.Send("Pack the box", (Line(page, "Hot sausage"), "15"), ("Input.Gross", "15.72"), ("Input.Tare", "0.80"), ("Input.Place", "Freezer 2, shelf B"));

        page.Expect("The box is packed: 15 packs, 14.92 lb net.", "Box 1", "14.92 lb", "Hot sausage, 15 packs", "Freezer 2, shelf B"); // 15.72 − 0.80
        page.Expect("The boxes hold 14.92 lb, 33.08 lb less than the 48.00 lb made.");                                                // 14.90 + 33.10
        var box = shop.Read(records => records.GoodsOf(job)).Boxes.Single();
        page.Expect(box.Ticket!.Value.Print());
        Assert.Equal(("0.80", "Freezer 2, shelf B"), (page.Form("Pack the box").Value("Input.Tare"), page.Form("Pack the box").Value("Input.Place")));
        await IsPdf(desk, $"/Freezer/Label/{box.Id}");
        await IsPdf(desk, $"/Freezer/Label/{box.Id}?stock=FourByTwo");
    }

    [Fact]
    public async Task Without_script_a_press_shows_packs_and_net_and_keeps_what_was_typed()
    {
        var job = HotAndRing();
        using var desk = await shop.SignIn(StaffRole.Cutter, "Freezer");
        var page = await desk.Open($"/Freezer/Job/{job}");

        page = await page.Send("Show the net", (Line(page, "Hot sausage"), "9"), (Line(page, "Ring sausage"), "3"), ("Input.Gross", "12 lb 8 oz"), ("Input.Tare", "0.80"));

        page.Expect("11.70 lb net", "12 packs"); // 12.50 − 0.80
        Assert.Equal(("9", "12 lb 8 oz"), (page.Form("Pack the box").Value(Line(page, "Hot sausage")), page.Form("Pack the box").Value("Input.Gross")));
        Assert.Empty(shop.Read(records => records.GoodsOf(job)).Boxes);
    }

    [Theory]
    [InlineData("", "15.70", "Count the packs that go into the box.")]
    [InlineData("some", "15.70", "")]
    [InlineData("15", "", "")]
    [InlineData("15", "0.80", "Type what the scale shows with the full box on it, more than its tare.")]
    public async Task What_is_missing_or_wrong_is_said_beside_its_field(string packs, string gross, string words)
    {
        var job = HotAndRing();
        using var desk = await shop.SignIn(StaffRole.Cutter, "Freezer");
        var page = await desk.Open($"/Freezer/Job/{job}");

        page = await page.Send("Pack the box", (Line(page, "Hot sausage"), packs), ("Input.Gross", gross), ("Input.Tare", "0.80"));

        Assert.Single(page.Problems);
        page.Expect(words);
        Assert.Equal((packs, gross), (page.Form("Pack the box").Value(Line(page, "Hot sausage")), page.Form("Pack the box").Value("Input.Gross")));
        Assert.Empty(shop.Read(records => records.GoodsOf(job)).Boxes);
    }

    [Fact]
    public async Task More_than_all_that_was_made_is_asked_about_once()
    {
        var job = HotAndRing();
        using var desk = await shop.SignIn(StaffRole.Cutter, "Freezer");
        var page = await desk.Open($"/Freezer/Job/{job}");

        page = await page.Send("Pack the box", (Line(page, "Hot sausage"), "15"), ("Input.Gross", "157.2"), ("Input.Tare", "0.80"));
        page.Expect("156.40 lb net is more than all that was made for this job, 48.00 lb."); // 14.90 + 33.10
        page = await page.Send("Pack the box", ("Input.Sure", "true"));

        page.Expect("The box is packed: 15 packs, 156.40 lb net.");
    }

    [Fact]
    public async Task A_box_is_moved_and_unpacked_with_a_reason()
    {
        var job = HotAndRing();
        var box = MadeJob.Box(shop, job, "Hot sausage");
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Freezer");
        var page = await desk.Open($"/Freezer/Job/{job}");

        (await page.Send("Move it", ("Handling.Place", " "))).Expect("Write where it stands now.");
        page = await page.Send("Move it", ("Handling.Place", "Shelf 9"));
        page.Expect("The box stands elsewhere now.", "Shelf 9, packed");
        (await page.Press("Unpack it")).Expect("Say why the box is unpacked.");
        page = await page.Send("Unpack it", ("Handling.Because", "a pack was torn"));

        page.Expect("The box is unpacked", "a pack was torn");
        Assert.False(shop.Read(records => records.GoodsOf(job)).Boxes.Single(one => one.Id == box).IsHere);
        using var label = await desk.Client.GetAsync(new Uri($"/Freezer/Label/{box}", UriKind.Relative));
        Assert.Equal(System.Net.HttpStatusCode.NotFound, label.StatusCode);
    }

    [Fact]
    public async Task It_is_said_when_everything_is_in_boxes_and_not_before_it_is_made()
    {
        var job = HotAndRing();
        MadeJob.Box(shop, job, "Hot sausage");
        using var desk = await shop.SignIn(StaffRole.Cutter, "Freezer");
        var page = await desk.Open($"/Freezer/Job/{job}");
        page.Expect("Not yet: Summer sausage is not begun; Plain ground is not begun.");
        foreach (var product in new[] { "Summer sausage", "Plain ground" })
        {
            MadeJob.Make(shop, job, product);
            MadeJob.Box(shop, job, product);
        }

        (await (await desk.Open($"/Freezer/Job/{job}")).Press("Everything is in boxes")).Expect("No box has Ring sausage in it.");
        MadeJob.Box(shop, job, "Ring sausage");
        page = await desk.Open($"/Freezer/Job/{job}");
        page.Expect("The boxes hold what was made: 106.26 lb."); // 33.10 + 19.86 + 14.90 + 38.40
        page = await page.Press("Everything is in boxes");

        page.Expect("Everything is in boxes: the job is ready to go.", "All in boxes");
        Assert.NotNull(shop.Read(records => records.Jobs.Single(one => one.Id == job).BoxedAt));
    }

    [Fact]
    public async Task Cuts_are_packed_by_their_name_beside_what_the_table_counted()
    {
        var job = TrimmedJob.Make(shop, "Cora Cuts", finished: false);
        var hand = new Hand(shop.StaffOf(StaffRole.Cutter), "Cutting");
        shop.Write((records, act) =>
        {
            var animal = TrimmedJob.AnimalOf(records, job).Id;
            foreach (var (cut, pounds, packs) in new[] { ("Backstrap, steaks", 6.20m, 8), ("Round, roasts", 7.35m, 4), ("Backstrap, steaks", 1.10m, 1) })
                records.WeighIns.Add(WeighIn.OfJob(WeighInKind.CutPack, job, animal, Weight.FromPounds(pounds), Weight.Zero, new Reading("bench", ScaleDivision.HundredthPound, cut, packs), act.Now, act.Hand.Id));
            records.Jobs.Single(one => one.Id == job).FinishCutting(act.Now);
            return Outcome.Done();
        }, hand);
        using var desk = await shop.SignIn(StaffRole.Cutter, "Freezer");
        var page = await desk.Open($"/Freezer/Job/{job}");
        page.Expect("Backstrap, steaks 7.30 lb 9 0", "Round, roasts 7.35 lb 4 0"); // 6.20 + 1.10 in 8 + 1 packs

        page = await page.Send("Pack the box", (Line(page, "Backstrap, steaks"), "9"), (Line(page, "Round, roasts"), "4"), ("Input.Gross", "15.45"), ("Input.Tare", "0.80"));

        page.Expect("The box is packed: 13 packs, 14.65 lb net.", "Backstrap, steaks, 9 packs", "Round, roasts, 4 packs", "in mixed boxes");
        (await desk.Open("/Freezer")).Expect("Freezer");
    }

    [Fact]
    public async Task The_list_tells_what_to_box_what_waits_and_where_boxes_stand()
    {
        var job = HotAndRing("Lena List");
        MadeJob.Box(shop, job, "Hot sausage", place: "Shelf of the list");
        MadeJob.Agree(shop, "Wes Waits");
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Freezer");

        var page = await desk.Open("/Freezer");

        Assert.Contains("Ring sausage Summer sausage, Plain ground 1 box", Row(page, "Lena List"), StringComparison.Ordinal);
        Assert.Contains("Ring sausage, Summer sausage, Hot sausage, Plain ground 0 boxes", Row(page, "Wes Waits"), StringComparison.Ordinal);
        Assert.Contains("Lena List: box 1", Row(page, "Shelf of the list"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_box_is_found_by_its_ticket_and_another_ticket_is_named()
    {
        var job = HotAndRing();
        var box = MadeJob.Box(shop, job, "Hot sausage");
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Freezer");
        var page = await desk.Open("/Freezer");

        Assert.Equal($"/Freezer/Job/{job}", (await page.Send("Show the box", ("Ticket", Code(TicketKind.Box, box)))).Path);
        (await page.Send("Show the box", ("Ticket", Code(TicketKind.Claim, job)))).Expect("This is a claim ticket, not a box's.");
        var unused = TicketCode.FromNumber(shop.Read(records => records.Tickets.Max(ticket => ticket.Number))).Next().Print();
        (await page.Send("Show the box", ("Ticket", unused))).Expect("No ticket has this code.");
        var nonsense = await page.Send("Show the box", ("Ticket", "shelf"));
        Assert.Equal("shelf", nonsense.Form("Show the box").Value("Ticket"));
        Assert.Single(nonsense.Problems);
    }

    [Theory]
    [InlineData(StaffRole.Clerk, "Pickup", "/Pickup/Job/")]
    [InlineData(StaffRole.Manager, "Freezer", "/Freezer/Job/")]
    [InlineData(StaffRole.Cutter, "Cutting", "/Freezer/Job/")]
    public async Task The_find_box_leads_from_a_boxs_ticket_to_where_the_hand_works_with_it(StaffRole role, string station, string page)
    {
        var job = HotAndRing();
        var box = MadeJob.Box(shop, job, "Hot sausage");
        using var desk = await shop.SignIn(role, station);

        Assert.Equal($"{page}{job}", (await desk.Open($"/Find?q={Code(TicketKind.Box, box)}")).Path);
    }

    private int HotAndRing(string owner = "Ines Moreau")
    {
        var job = MadeJob.Agree(shop, owner);
        MadeJob.Make(shop, job, "Hot sausage");
        MadeJob.Make(shop, job, "Ring sausage");
        return job;
    }

    /// <summary>The name of the field that counts packs of one kind.</summary>
    private static string Line(Screen page, string kind)
    {
        var label = page.Document.QuerySelectorAll(".packs label").Single(one => one.TextContent.Trim() == kind);
        return page.Document.GetElementById(label.GetAttribute("for")!)!.GetAttribute("name")!;
    }

    private string Code(TicketKind kind, int id) => shop.Read(records => records.Tickets.Single(ticket => ticket.Kind == kind && ticket.TargetId == id)).Code.Print();

    private static string Row(Screen page, string words) =>
        string.Join(' ', page.Document.QuerySelectorAll("tr").Single(row => row.QuerySelector("th")!.TextContent.Contains(words, StringComparison.Ordinal)).TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private static async Task IsPdf(Desk desk, string path)
    {
        using var answer = await desk.Client.GetAsync(new Uri(path, UriKind.Relative));
        Assert.Equal("%PDF"u8.ToArray(), (await answer.Content.ReadAsByteArrayAsync())[..4]);
    }
}
