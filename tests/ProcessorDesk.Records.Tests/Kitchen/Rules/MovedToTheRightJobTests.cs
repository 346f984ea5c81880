using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records.Tests.Cast;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;
using Xunit;

namespace ProcessorDesk.Records.Tests.Kitchen.Rules;

/// <summary>A lug was booked to the wrong deer: one verb moves it, a strike and a new entry; where it is mixed already, it is recorded and the batch held.</summary>
public sealed class MovedToTheRightJobTests(KitchenShop shop) : IClassFixture<KitchenShop>
{
    [Fact]
    public void A_lug_booked_to_the_wrong_deer_is_struck_there_and_booked_to_the_right_one_at_once()
    {
        var (wrong, right) = (OnTable("Ann Alder"), OnTable("Ben Birch"));

        var moved = Move(wrong.WeighIn, right.Job, right.Deer);

        var (old, entry) = shop.Read(records => (
            records.WeighIns.Include(one => one.Strike).Single(one => one.Id == wrong.WeighIn), records.WeighIns.Include(one => one.Filling!.Animals).Include(one => one.Filling!.Lug).Single(one => one.Id == moved)));
        Assert.Equal("two lugs stood side by side", old.Strike!.Because);
        Assert.Equal((right.Job, old.Gross, old.Tare, old.KeyedDivision, old.Scale), (entry.JobId!.Value, entry.Gross, entry.Tare, entry.KeyedDivision, entry.Scale));
        Assert.Equal([right.Deer], entry.Filling!.Animals.Select(one => one.AnimalId));
        Assert.Equal((0m, 40m), (Lean(wrong.Job), Lean(right.Job))); // 20 lb each before
    }

    [Fact]
    public void The_lug_stays_in_use_under_its_right_name_with_a_new_ticket_and_the_old_ticket_is_void()
    {
        var (wrong, right) = (OnTable("Cy Cedar"), OnTable("Di Dogwood"));
        shop.File.Do((records, act) => act.NewTicket(TicketKind.Filling, wrong.Filling));

        var moved = Move(wrong.WeighIn, right.Job, right.Deer);

        shop.Read(records =>
        {
            var filling = records.WeighIns.Where(one => one.Id == moved).Select(one => one.Filling!).Single();
            Assert.Null(filling.EmptiedAt);
            Assert.NotNull(records.Fillings.Single(one => one.Id == wrong.Filling).EmptiedAt);
            var fresh = records.Tickets.Single(one => one.Kind == TicketKind.Filling && one.TargetId == filling.Id && one.VoidedAt == null);
            Assert.Equal(fresh.Number, records.Tickets.Single(one => one.Kind == TicketKind.Filling && one.TargetId == wrong.Filling).ReplacedByNumber);
            return 0;
        });
    }

    [Fact]
    public void Bone_weighed_for_the_wrong_job_moves_too()
    {
        var (wrong, right) = (OnTable("Ed Elm"), OnTable("Flo Fir"));
        var bone = shop.File.Do((records, act) =>
        {
            var one = WeighIn.OfJob(WeighInKind.Bone, wrong.Job, wrong.Deer, Weight.FromPounds(9m), Weight.FromPounds(1m), Sample.Bench, act.Now, act.Hand.Id);
            records.WeighIns.Add(one);
            records.SaveChanges();
            return one.Id;
        });

        Move(bone, right.Job, right.Deer);

        Assert.Equal((Weight.Zero, 8m), shop.Read(records => (records.WeightsOf(wrong.Job, ScaleDivision.HundredthPound).Bone, decimal.Round(records.WeightsOf(right.Job, ScaleDivision.HundredthPound).Bone.Pounds, 2))));
    }

    [Fact]
    public void Meat_that_is_mixed_already_is_recorded_holds_the_batch_and_names_the_owners_touched()
    {
        var (batch, job) = shop.MixedRing("Gus Gum");
        var right = OnTable("Hal Holly");
        var weighIn = shop.Read(records => records.WeighIns.Single(one => one.FillingId == job.Lugs[0] && one.Kind == WeighInKind.LeanTrim).Id);

        Move(weighIn, right.Job, right.Deer);

        shop.Read(records =>
        {
            Assert.Equal([HoldReason.WrongMeatIn], records.Holds.Standing().Where(hold => hold.BatchId == batch).Select(hold => hold.Reason).Distinct().ToList());
            Assert.Equal(["Gus Gum", "Hal Holly"], records.TouchedBy(batch).Select(one => one.Owner.Name).Order().ToList());
            var draws = records.Draws.Include(draw => draw.Filling).Where(draw => draw.Load.BatchId == batch).ToList();
            Assert.All(draws.Where(draw => draw.StruckAt is null), draw => Assert.Equal((right.Job, (int?)null), (draw.Filling.JobId, draw.EntryId)));
            // What is in the mixer is as it was: two draws of 12.50 lb, the struck ones beside them.
            Assert.Equal(25m, decimal.Round(draws.Where(draw => draw.StruckAt is null).Sum(draw => draw.Weighed.Pounds), 2));
            Assert.Equal(2, draws.Count(draw => draw.StruckAt is not null));
            return 0;
        });
        Assert.Contains("is on hold", shop.Release(batch).Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_other_deer_of_the_same_owner_holds_no_batch()
    {
        var (batch, job) = shop.MixedRing("Ida Ivy");
        var second = shop.File.Do((records, act) => Sample.Deer(records, records.Jobs.Single(one => one.Id == job.Id), act, "K second").Id);
        var weighIn = shop.Read(records => records.WeighIns.Single(one => one.FillingId == job.Lugs[0] && one.Kind == WeighInKind.LeanTrim).Id);

        Move(weighIn, job.Id, second);

        Assert.False(shop.Read(records => records.Holds.Standing().Any(hold => hold.BatchId == batch)));
        Assert.Equal([second], shop.Read(records => records.Draws.Where(draw => draw.Load.BatchId == batch && draw.StruckAt == null).SelectMany(draw => draw.Filling.Animals).Select(one => one.AnimalId).Distinct().ToList()));
    }

    [Fact]
    public void A_split_agreed_on_that_lean_is_withdrawn_first_while_no_meat_is_in()
    {
        var job = shop.TwoDeer("Jo Juniper");
        var right = OnTable("Kay Kapok");
        var weighIn = shop.Read(records => records.WeighIns.Single(one => one.FillingId == job.Lugs[0]).Id);

        Assert.Equal($"The split of job {job.Number} is agreed on its lean. Withdraw that split at the grind first.", Try(weighIn, right.Job, right.Deer).Text());
    }

    [Fact]
    public void It_needs_its_reason_an_animal_of_that_job_and_another_place_than_it_has()
    {
        var (wrong, right) = (OnTable("Lee Larch"), OnTable("Moe Maple"));

        Assert.Equal("Say how it came to be booked wrong.", Try(wrong.WeighIn, right.Job, right.Deer, " ").Text());
        Assert.StartsWith("Choose whose meat it is", Try(wrong.WeighIn, right.Job, wrong.Deer).Text(), StringComparison.Ordinal);
        Assert.Equal("It is booked to that job and that animal already.", Try(wrong.WeighIn, wrong.Job, wrong.Deer).Text());
        Move(wrong.WeighIn, right.Job, right.Deer);
        Assert.Contains("This weight was struck out before.", Try(wrong.WeighIn, right.Job, right.Deer).Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void In_a_released_batch_the_record_stays_closed()
    {
        var (batch, job) = shop.MixedRing("Nan Nutmeg");
        shop.CookAndChill(batch);
        KitchenSteps.Expect(shop.Weigh(batch, null, 33.5m));
        KitchenSteps.Expect(shop.Release(batch));
        var right = OnTable("Oz Oak");
        var weighIn = shop.Read(records => records.WeighIns.Single(one => one.FillingId == job.Lugs[0] && one.Kind == WeighInKind.LeanTrim).Id);

        Assert.Contains("is released: its record is closed. Put it on hold, trace it, and tell the owners.", Try(weighIn, right.Job, right.Deer).Text(), StringComparison.Ordinal);
    }

    private Outcome Try(int weighIn, int job, int deer, string because = "two lugs stood side by side") =>
        shop.Try((records, act) => records.MoveWeighIn(new MoveOrder(weighIn, job, [deer], because), act));

    private int Move(int weighIn, int job, int deer) =>
        shop.Must((records, act) => records.MoveWeighIn(new MoveOrder(weighIn, job, [deer], "two lugs stood side by side"), act));

    private decimal Lean(int job) => decimal.Round(shop.Read(records => records.LeanOf(job, ScaleDivision.HundredthPound)).Pounds, 2);

    /// <summary>A job on the table with one deer and 20.00 lb of lean in a lug.</summary>
    private (int Job, int Deer, int Filling, int WeighIn) OnTable(string owner) => shop.File.Do((records, act) =>
    {
        var job = Sample.Job(records, act, owner);
        var deer = Sample.Deer(records, job, act, "M " + owner);
        job.OrderGrind([new GrindOrder(0, Sample.PlainGround(records).Id, AskKind.Rest, Weight.Zero, Proportion.Zero)]);
        job.CompleteDetails();
        job.StartCutting(act.Now);
        var filling = Sample.Lug(records, job, deer, act);
        var weighIn = Sample.Lean(records, filling, 22.50m, act); // the lug weighs 2.50 lb
        return (job.Id, deer.Id, filling.Id, weighIn.Id);
    });
}
