using System.Globalization;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;
using ProcessorDesk.Web.Tests.Harness;

namespace ProcessorDesk.Web.Tests.Cutting;

/// <summary>What the counter would have done before an animal reaches cooler and table.</summary>
internal static class FloorCast
{
    private static int s_tag = 100;
    private static int s_lug = 10;

    /// <summary>A job with its deer, field-dressed and weighed at the door, all grind, promised in three days.</summary>
    /// <returns>The job's id and those of its deer, in order.</returns>
    public static (int Job, int[] Animals) TakeIn(this ShopUnderTest shop, string owner, params decimal[] pounds) =>
        shop.TakeIn(owner, _ => { }, pounds);

    public static (int Job, int[] Animals) TakeIn(this ShopUnderTest shop, string owner, Action<Animal> each, params decimal[] pounds)
    {
        var staff = shop.StaffOf(StaffRole.Clerk);
        var animals = new List<int>();
        var outcome = shop.Write((records, act) =>
        {
            var job = new Job(act.NextJobNumber(), new Owner(owner, "555-0170"), act.Now, staff, records.PriceLists.Select(list => list.Id).First());
            var plain = records.Products.Single(product => product.IsPlainGround);
            job.Arrange(DateOnly.FromDateTime(act.Now).AddDays(3), Pooling.Own, PackWrap.Vacuum, noPork: false, notes: null);
            job.OrderCuts([new CutOrderLine(1, "loin", "steak", "3/4 in", 4), new CutOrderLine(2, "haunch", "grind", null, null)]);
            records.Jobs.Add(job);
            records.SaveChanges();
            job.OrderGrind([new GrindOrder(1, plain.Id, AskKind.Rest, Weight.Zero, Proportion.Zero)]);
            job.CompleteDetails();
            foreach (var weight in pounds)
            {
                var animal = new Animal(Species.WhiteTailDeer, ArrivalState.FieldDressed, act.Now);
                animal.Identify($"T-{Interlocked.Increment(ref s_tag)}", null, null, null, null);
                animal.ShareWith(job, Ratio.One, Portion.Whole);
                each(animal);
                records.Animals.Add(animal);
                records.SaveChanges();
                records.WeighIns.Add(WeighIn.OfAnimal(
                    WeighInKind.Arrival, animal.Id, Weight.FromPounds(weight), new Reading("rail", ScaleDivision.Of(WeightUnit.Pound, 0.5m)), act.Now, staff));
                act.NewTicket(TicketKind.Carcass, animal.Id);
                animals.Add(animal.Id);
            }

            act.NewTicket(TicketKind.Claim, job.Id);
            return Outcome.Done(job.Id);
        });
        return (int.Parse(outcome.Result, CultureInfo.InvariantCulture), [.. animals]);
    }

    /// <summary>A lug of its own for the test; its number, and the pounds it weighs empty.</summary>
    public static string AddLug(this ShopUnderTest shop, decimal tare)
    {
        var number = Interlocked.Increment(ref s_lug);
        shop.Write((records, act) =>
        {
            records.Lugs.Add(new Lug(number, Weight.FromPounds(tare), act.Now));
            return Outcome.Done();
        });
        return number.ToString(CultureInfo.InvariantCulture);
    }

    public static void StartCutting(this ShopUnderTest shop, int job) => shop.Write((records, act) =>
    {
        records.Jobs.Single(one => one.Id == job).StartCutting(act.Now);
        return Outcome.Done();
    });

    public static void Hold(this ShopUnderTest shop, int animal, HoldReason reason)
    {
        var manager = shop.StaffOf(StaffRole.Manager);
        shop.Write((records, act) =>
        {
            records.Animals.Single(one => one.Id == animal).PutOnHold(reason, null, act.Now, manager);
            return Outcome.Done();
        });
    }

    public static string TagOf(this ShopUnderTest shop, int animal) => shop.Read(records => records.Animals.Single(one => one.Id == animal).Tag!);

    public static JobWeights WeightsOf(this ShopUnderTest shop, int job) => shop.Read(records => records.WeightsOf(job, ScaleDivision.HundredthPound));
}
