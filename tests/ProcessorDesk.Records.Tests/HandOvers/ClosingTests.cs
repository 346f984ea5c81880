using ProcessorDesk.Records.Tests.Kitchen;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;
using Xunit;

namespace ProcessorDesk.Records.Tests.HandOvers;

/// <summary>A job closes by itself when all of it is boxed and the last box and part have left.</summary>
public sealed class ClosingTests(PickupShop shop) : IClassFixture<PickupShop>
{
    [Fact]
    public void A_box_or_a_part_that_is_here_keeps_the_job_open()
    {
        var (job, boxes) = AllBoxed("Oda Cole");
        var antlers = Keep(job, PartKind.Antlers);
        shop.HandOver(job, [boxes[0], boxes[1]]);
        Assert.Null(shop.JobOf(job).HandedOverAt);

        shop.HandOver(job, [boxes[2]]);
        Assert.Null(shop.JobOf(job).HandedOverAt);
        shop.HandOver(job, [], [antlers], to: "Pam Cole");

        Assert.Equal((shop.File.Now, "Pam Cole"), (shop.JobOf(job).HandedOverAt, shop.JobOf(job).HandedOverTo));
        Assert.Equal("Pam Cole", shop.Read(records => records.Parts.Single(part => part.Id == antlers).GivenTo));
    }

    [Fact]
    public void The_last_part_may_leave_alone()
    {
        var (job, boxes) = AllBoxed("Quin Cole");
        var cape = Keep(job, PartKind.Cape);
        shop.HandOver(job, boxes);

        shop.Must((records, act) => records.GivePart(cape, "The taxidermist", act));

        Assert.Equal((shop.File.Now, "The taxidermist"), (shop.JobOf(job).HandedOverAt, shop.JobOf(job).HandedOverTo));
        Assert.Null(shop.Read(records => records.Parts.Single(part => part.Id == cape).HandOverId));
    }

    [Fact]
    public void Said_afterwards_that_this_was_all_it_closes_at_the_last_hand_over()
    {
        var job = shop.Job("Rex Cole");
        shop.MakeHot(job);
        shop.MakeSummer(job);
        int[] boxes = [shop.Box(job, PickupShop.Backstrap, 9.40m), shop.Box(job, PickupShop.Hot, 12.10m), shop.Box(job, PickupShop.Summer, 12.30m)];
        shop.Invoice(job);
        shop.HandOver(job, boxes, to: "Rex Cole", owing: true);
        var left = shop.File.Now;
        Assert.Null(shop.JobOf(job).HandedOverAt);

        shop.Finish(job);

        Assert.Equal((left, "Rex Cole"), (shop.JobOf(job).HandedOverAt, shop.JobOf(job).HandedOverTo));
    }

    [Fact]
    public void A_part_of_a_shared_animal_goes_with_the_job_it_came_in_with()
    {
        var (first, second) = (shop.Job("Sue Cole"), shop.Job("Tom Cole"));
        var head = shop.File.Do((records, act) =>
        {
            var hog = new Animal(Species.Hog, ArrivalState.Whole, act.Now);
            hog.ShareWith(records.Jobs.Single(one => one.Id == first.Id), Ratio.Of(1, 2), Portion.Side);
            records.Animals.Add(hog);
            records.SaveChanges();
            hog.ShareWith(records.Jobs.Single(one => one.Id == second.Id), Ratio.Of(1, 2), Portion.Side);
            var kept = hog.KeepPart(PartKind.Head, null);
            records.SaveChanges();
            return kept.Id;
        });
        var (boxes, others) = (BoxAll(first), BoxAll(second));

        Assert.Equal([head], shop.Read(records => records.GoodsOf(first.Id)).PartsHere.Select(part => part.Id));
        Assert.Empty(shop.Read(records => records.GoodsOf(second.Id)).Parts);
        Assert.Contains("another job's", shop.TryHandOver(second, others, [head], owing: true).Text(), StringComparison.Ordinal);
        shop.HandOver(second, others, owing: true);
        Assert.NotNull(shop.JobOf(second).HandedOverAt);
        shop.HandOver(first, boxes);
        Assert.Null(shop.JobOf(first).HandedOverAt);
    }

    [Fact]
    public void Where_all_was_thrown_out_the_job_is_closed_with_nothing_in_hand()
    {
        var job = shop.Kitchen.Job("Una Cole", Pooling.Own, [9m], (PickupShop.Hot, AskKind.Rest, 0m));
        var batch = shop.Mix(job, PickupShop.Hot, 0, 9m, 3m);
        Assert.Contains("Tick or scan", shop.TryHandOver(job, []).Text(), StringComparison.Ordinal);
        shop.Must((records, act) => records.WriteDisposition(
            batch, new DispositionOrder(DispositionKind.OwnersTold, null, "Kit Hollow", DateOnly.FromDateTime(act.Now), "told by phone"), DateOnly.FromDateTime(act.Now), act));
        shop.Must((records, act) => records.DiscardBatch(batch, "the cooler failed, told by phone", act));
        Assert.Equal(["Hot sausage: thrown out: the cooler failed, told by phone"], shop.MissingAt(job, shop.File.Now));

        shop.Finish(job);
        Assert.Equal(JobStage.Boxed, shop.JobOf(job).Stage);
        shop.HandOver(job, []);

        Assert.Equal(JobStage.HandedOver, shop.JobOf(job).Stage);
        Assert.Contains("was handed over before", shop.TryHandOver(job, []).Text(), StringComparison.Ordinal);
    }

    /// <summary>Everything of a job in three boxes, invoiced and paid.</summary>
    private (MadeJob Job, int[] Boxes) AllBoxed(string owner)
    {
        var job = shop.Job(owner);
        return (job, BoxAll(job));
    }

    private int[] BoxAll(MadeJob job)
    {
        shop.MakeHot(job);
        shop.MakeSummer(job);
        int[] boxes = [shop.Box(job, PickupShop.Backstrap, 9.40m), shop.Box(job, PickupShop.Hot, 12.10m), shop.Box(job, PickupShop.Summer, 12.30m)];
        shop.Finish(job);
        shop.Invoice(job);
        shop.Pay(job, shop.Read(records => records.BalanceOf(job.Id)).Dollars);
        return boxes;
    }

    private int Keep(MadeJob job, PartKind kind) => shop.File.Do((records, _) =>
    {
        var part = records.Animals.Single(animal => animal.Id == job.AnimalId).KeepPart(kind, null);
        records.SaveChanges();
        return part.Id;
    });
}
