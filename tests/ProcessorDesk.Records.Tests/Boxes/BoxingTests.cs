using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records.Tests.HandOvers;
using ProcessorDesk.Records.Tests.Kitchen;
using ProcessorDesk.Trade;
using Xunit;

namespace ProcessorDesk.Records.Tests.Boxes;

public sealed class BoxingTests(PickupShop shop) : IClassFixture<PickupShop>
{
    [Fact]
    public void A_box_holds_counted_packs_at_gross_less_tare_with_a_place_and_a_ticket()
    {
        var job = shop.Job("Abe Dunn");
        shop.MakeHot(job);
        var id = shop.Must((records, act) => records.PackBox(
            new BoxOrder(job.Id, [PickupShop.Packs(job, PickupShop.Hot, 12), PickupShop.Packs(job, PickupShop.Backstrap, 6), new PacksIn(null, " ", 2)],
                Weight.FromPounds(25.30m), Weight.FromPounds(1.10m), " Freezer 2, shelf B "), act));

        var box = shop.Read(records => records.GoodsOf(job.Id)).Boxes.Single();
        Assert.Equal((id, 1, "Freezer 2, shelf B", 20), (box.Id, box.Number, box.Place, box.PackCount));
        Assert.Equal("24.20 lb", PickupShop.Bench.Print(box.Net)); // 25.30 − 1.10
        Assert.Equal("Hot sausage, 12 packs; Backstrap, steaks, 6 packs; Cuts, 2 packs", box.InWords);
        Assert.Equal([job.Allotments[PickupShop.Hot], null, null], box.Contents.Select(content => content.AllotmentId));
        var ticket = shop.Read(records => records.Tickets.Single(one => one.Kind == TicketKind.Box && one.TargetId == id));
        Assert.Equal(ticket.Code, box.Ticket);
    }

    [Fact]
    public void What_is_not_released_is_not_boxed()
    {
        var job = shop.Job("Bix Dunn");

        Assert.Equal("Hot sausage is not released yet. Finish its batch in the kitchen first.", Pack(job, 10m, 1m, PickupShop.Packs(job, PickupShop.Hot, 5)).Text());
        Assert.Equal("That product is not released yet. Finish its batch in the kitchen first.", Pack(job, 10m, 1m, new PacksIn(123_456, null, 5)).Text());
    }

    [Fact]
    public void Cuts_are_boxed_when_cutting_is_finished()
    {
        var job = shop.Job("Cal Dunn");
        shop.File.Do((records, _) =>
        {
            var found = records.Jobs.Single(one => one.Id == job.Id);
            found.WithdrawSplit();
            return found.ReopenCutting();
        });

        Assert.Equal("Cutting is not finished, so the cuts can't be boxed yet.", Pack(job, 10m, 1m, PickupShop.Packs(job, PickupShop.Backstrap, 5)).Text());
    }

    [Theory]
    [InlineData(10.00, 10.00)]
    [InlineData(0.90, 1.00)]
    public void The_full_box_weighs_more_than_the_empty_one(decimal gross, decimal tare)
    {
        var job = shop.Job($"Dot Dunn {gross}");

        Assert.Equal("Gross", Pack(job, gross, tare, PickupShop.Packs(job, PickupShop.Backstrap, 5)).Findings.Single().Field);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-3)]
    public void Packs_are_counted(int packs)
    {
        var job = shop.Job($"Els Dunn {packs}");

        Assert.Equal(["Packs"], Pack(job, 10m, 1m, PickupShop.Packs(job, PickupShop.Backstrap, packs)).Findings.Select(finding => finding.Field));
    }

    [Fact]
    public void An_unpacked_box_gives_up_its_weight_and_its_ticket_and_keeps_its_number()
    {
        var job = shop.Job("Flo Dunn");
        var box = shop.Box(job, PickupShop.Backstrap, 9.40m);
        Assert.Equal("Say why the box is unpacked.", shop.Try((records, act) => records.UnpackBox(box, " ", act)).Text());

        shop.Must((records, act) => records.UnpackBox(box, "a pack was torn", act));
        shop.Box(job, PickupShop.Backstrap, 8.90m);

        var boxes = shop.Read(records => records.GoodsOf(job.Id)).Boxes;
        Assert.Equal([(1, false, "a pack was torn"), (2, true, null)], boxes.Select(one => (one.Number, one.IsHere, one.UnpackedBecause)));
        Assert.Null(boxes[0].Ticket);
        var weighed = shop.Read(records => records.Boxes.Include(one => one.Weighed).ThenInclude(one => one.Strike).Single(one => one.Id == box).Weighed);
        Assert.Equal("box unpacked: a pack was torn", weighed.Strike?.Because);
        Assert.Contains("unpacked before", shop.Try((records, act) => records.UnpackBox(box, "again", act)).Text(), StringComparison.Ordinal);
        Assert.Contains("unpacked before", shop.Try((records, act) => records.MoveBox(box, "Shelf 1", act)).Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_boxs_weight_is_struck_out_by_unpacking_alone()
    {
        var job = shop.Job("Gus Dunn");
        var box = shop.Box(job, PickupShop.Backstrap, 9.40m);

        var refusal = shop.File.Do((records, act) => records.Boxes.Include(one => one.Weighed).ThenInclude(one => one.Strike).Single(one => one.Id == box).Weighed.StrikeOut("typed wrong", act.Now, act.Hand.Id));

        Assert.Equal("A box's weight goes with its box. Unpack the box at the freezer.", refusal?.Text);
    }

    [Fact]
    public void A_box_is_moved_to_a_place_that_is_said()
    {
        var job = shop.Job("Hal Dunn");
        var box = shop.Box(job, PickupShop.Backstrap, 9.40m, place: null);

        Assert.Equal("Place", shop.Try((records, act) => records.MoveBox(box, "", act)).Findings.Single().Field);
        shop.Must((records, act) => records.MoveBox(box, "Shelf 7", act));

        Assert.Equal("Shelf 7", shop.Read(records => records.Boxes.Single(one => one.Id == box).Place));
    }

    [Fact]
    public void All_is_boxed_when_everything_made_and_cut_is_in_a_box()
    {
        var job = shop.Job("Ike Dunn");
        Outcome Finish() => shop.Try((records, act) => records.FinishBoxing(job.Id, act));
        Assert.Equal("Not everything is made yet. Finish its batches in the kitchen first. No box has the cuts in it.", Finish().Text());
        shop.MakeHot(job);
        shop.MakeSummer(job);
        Assert.Equal("No box has Hot sausage in it. No box has Summer sausage in it. No box has the cuts in it.", Finish().Text());
        shop.Box(job, PickupShop.Hot, 12.10m);
        shop.Box(job, PickupShop.Summer, 12.30m);
        shop.Box(job, PickupShop.Backstrap, 9.40m);

        Assert.True(Finish().IsDone);
        Assert.Equal(JobStage.Boxed, shop.JobOf(job).Stage);
        Assert.Contains("said before", Finish().Text(), StringComparison.Ordinal);

        // One box more, or one taken apart, and it has to be said again.
        var more = shop.Box(job, PickupShop.Hot, 0.30m, packs: 1);
        Assert.Equal(JobStage.Made, shop.JobOf(job).Stage);
        Assert.True(Finish().IsDone);
        shop.Must((records, act) => records.UnpackBox(more, "into box 1", act));
        Assert.Equal(JobStage.Made, shop.JobOf(job).Stage);
    }

    [Fact]
    public void Nothing_is_packed_for_a_job_that_left()
    {
        var job = shop.Job("Joy Dunn");
        shop.File.Do((records, act) =>
        {
            records.Jobs.Single(one => one.Id == job.Id).HandOver(act.Now, act.Hand.Id, "Joy Dunn");
            return 0;
        });

        Assert.Contains("was handed over", Pack(job, 10m, 1m, PickupShop.Packs(job, PickupShop.Backstrap, 5)).Text(), StringComparison.Ordinal);
    }

    private Outcome Pack(MadeJob job, decimal gross, decimal tare, params PacksIn[] packs) => shop.Try((records, act) =>
        records.PackBox(new BoxOrder(job.Id, packs, Weight.FromPounds(gross), Weight.FromPounds(tare), null), act));
}
