using ProcessorDesk.Records;
using ProcessorDesk.Web.Tests.Grind;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Find;

/// <summary>Batches and boxes are found by their numbers and their tickets.</summary>
public sealed class BatchAndBoxTests : IClassFixture<TrimmedShop>
{
    private readonly TrimmedShop _shop;
    private readonly int _jobId;

    public BatchAndBoxTests(TrimmedShop shop)
    {
        _shop = shop;
        _jobId = MadeJob.Boxed(shop);
    }

    private async Task<Screen> Find(string typed, StaffRole role = StaffRole.Cutter)
    {
        using var desk = await _shop.SignIn(role);
        return await desk.Open("/Find?q=" + Uri.EscapeDataString(typed));
    }

    private Batch Ring => _shop.Read(records => records.Batches.Single(batch => batch.Product.Name == "Ring sausage" && batch.Entries.Any(entry => entry.JobId == _jobId)));

    private string Code(TicketKind kind, int targetId) => _shop.Read(records => records.Tickets.Single(ticket => ticket.Kind == kind && ticket.TargetId == targetId)).Code.Print();

    [Theory]
    [InlineData("batch {0}")]
    [InlineData("Batch #{0}")]
    [InlineData("BATCH{0}")]
    public async Task A_batch_by_its_number_says_whose_meat_is_in_it(string typed) =>
        (await Find(string.Format(System.Globalization.CultureInfo.InvariantCulture, typed, Ring.Number))).Expect($"Batch {Ring.Number}, Ring sausage", "Ines Moreau");

    [Fact]
    public async Task It_leads_a_hand_of_the_kitchen_to_the_batch_itself()
    {
        Assert.Equal($"/Kitchen/Batch/{Ring.Id}", (await Find($"batch {Ring.Number}", StaffRole.Kitchen)).Path);
        Assert.Equal($"/Kitchen/Batch/{Ring.Id}", (await Find(Code(TicketKind.Batch, Ring.Id), StaffRole.Kitchen)).Path);
    }

    [Fact]
    public async Task A_bare_number_offers_the_batch_beside_what_else_bears_it()
    {
        var page = await Find($"{Ring.Number}");

        Assert.Contains(page.Document.QuerySelectorAll("main a"), link => link.TextContent == $"Batch {Ring.Number}, Ring sausage");
    }

    [Fact]
    public async Task A_batch_that_is_not_there_is_not_found() => (await Find("batch 999999")).Expect("Nothing found for", "batch 12");

    [Fact]
    public async Task The_ticket_of_a_batch_says_whose_meat_is_in_it() =>
        (await Find(Code(TicketKind.Batch, Ring.Id))).Expect("The meat of these owners is in this batch.", "Ines Moreau");

    [Fact]
    public async Task The_ticket_of_a_box_leads_to_its_job_at_the_freezer_or_the_pickup_until_the_box_is_unpacked()
    {
        var box = _shop.Read(records => records.Boxes.First(one => one.JobId == _jobId)).Id;
        Assert.Equal($"/Freezer/Job/{_jobId}", (await Find(Code(TicketKind.Box, box))).Path);
        Assert.Equal($"/Pickup/Job/{_jobId}", (await Find(Code(TicketKind.Box, box), StaffRole.Clerk)).Path);

        _shop.Write((records, act) => records.UnpackBox(box, "packed in the wrong one", act), new Hand(_shop.StaffOf(StaffRole.Manager), "Freezer"));

        (await Find(Code(TicketKind.Box, box))).Expect("was made void", "Ines Moreau");
    }
}
