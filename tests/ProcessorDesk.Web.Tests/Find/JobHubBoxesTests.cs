using ProcessorDesk.Records;
using ProcessorDesk.Web.Tests.Grind;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Find;

/// <summary>A job that is made: its batches, its boxes and what left, on the page about all of it.</summary>
public sealed class JobHubBoxesTests(TrimmedShop shop) : IClassFixture<TrimmedShop>
{
    private async Task<Screen> Hub(int jobId, StaffRole role)
    {
        using var desk = await shop.SignIn(role);
        return await desk.Open($"/Find/Job/{jobId}");
    }

    [Fact]
    public async Task Each_product_says_its_batch_and_what_came_of_it()
    {
        var jobId = MadeJob.Agree(shop);
        var ring = MadeJob.Make(shop, jobId, "Ring sausage");
        var number = shop.Read(records => records.Batches.Where(batch => batch.Id == ring).Select(batch => batch.Number).Single());

        (await Hub(jobId, StaffRole.Clerk)).Expect($"Batch {number}", "Released Fri 27 Nov", "33.10 lb", "Waits for a batch", "about ");
        var links = (await Hub(jobId, StaffRole.Kitchen)).Document.QuerySelectorAll("main a").Select(link => link.GetAttribute("href"));
        Assert.Contains($"/Kitchen/Batch/{ring}", links);
    }

    [Fact]
    public async Task A_box_says_what_is_in_it_and_where_it_lies()
    {
        var jobId = MadeJob.Boxed(shop);
        var box = shop.Read(records => records.Boxes.Single(one => one.JobId == jobId && one.Number == 1)).Id;
        var page = await Hub(jobId, StaffRole.Cutter);

        page.Expect("Box 1, 33.10 lb", "Ring sausage, 20 packs", "Shelf 3", "Everything in boxes");
        page.Expect(shop.Read(records => records.Tickets.Single(ticket => ticket.Kind == TicketKind.Box && ticket.TargetId == box)).Code.Print(), "Box ticket");
    }

    [Fact]
    public async Task What_left_says_with_whom_and_when_and_an_unpacked_box_is_gone_from_the_list()
    {
        var jobId = MadeJob.Boxed(shop);
        var hand = new Hand(shop.StaffOf(StaffRole.Manager), "Pickup");
        var boxes = shop.Read(records => records.Boxes.Where(one => one.JobId == jobId).OrderBy(one => one.Number).Select(one => one.Id).ToList());
        var antlers = shop.Read(records => records.Parts.First(part => part.Animal.Shares.Any(share => share.JobId == jobId)).Id);
        shop.Write((records, act) => records.IssueInvoice(jobId, new DateOnly(2026, 11, 27), new Dictionary<int, int>(), act), hand);
        shop.Write((records, act) => records.HandOver(new HandOverOrder(jobId, [boxes[0], boxes[2]], [antlers], "Tom Moreau", Owing: true), act), hand);
        shop.Write((records, act) => records.UnpackBox(boxes[3], "too small", act), hand);

        var page = await Hub(jobId, StaffRole.Clerk);

        page.Expect("Handed over to Tom Moreau: box 1, box 3, antlers", "Went with Tom Moreau", "Box 2, 19.86 lb");
        Assert.DoesNotContain("Box 4", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Everything in boxes", page.Text, StringComparison.Ordinal);
    }
}
