using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;
using ProcessorDesk.Web.Tests.Harness;

namespace ProcessorDesk.Web.Tests.Find;

/// <summary>A shop with one job in every stage; each owner's name says which.</summary>
public sealed class BusyShop : ShopUnderTest
{
    public BusyShop()
    {
        Clerk = StaffOf(StaffRole.Clerk);
        Hung = TakeIn("Hanna Hung", "(608) 555-0101", "WI 111-22", DiseaseTest.NotRequired, daysAgo: 10);
        Write((records, act) =>
        {
            records.Animals.Single(animal => animal.TagKey == "WI11122").Hang("A4", act.Now.AddDays(-10));
            return Outcome.Done();
        }, Hand);
        Held = TakeIn("Hugo Held", "(608) 555-0102", "WI 222-33", DiseaseTest.Pending, daysAgo: 2);
        Fresh = TakeIn("Freya Fresh", "(608) 555-0103", "WI 333-44", DiseaseTest.NotRequired, daysAgo: 0);
        NoDetails = TakeIn("Nora Noted", "(608) 555-0104", "WI 444-55", DiseaseTest.NotRequired, daysAgo: 1, isWhole: false);
        Cut = TakeIn("Carl Cut", "(608) 555-0105", "WI 555-66", DiseaseTest.NotRequired, daysAgo: 4);
        Agreed = TakeIn("Agnes Agreed", "(608) 555-0106", "WI 666-77", DiseaseTest.NotRequired, daysAgo: 5);
        Write((records, act) =>
        {
            foreach (var id in new[] { Cut, Agreed })
            {
                var job = records.Jobs.Single(one => one.Id == id);
                job.StartCutting(act.Now.AddHours(-3));
                job.FinishCutting(act.Now.AddHours(-1));
                var lug = new Lug(id, Weight.FromPounds(3m), act.Now);
                var animal = records.Shares.Where(share => share.JobId == id).Select(share => share.AnimalId).Single();
                var filling = new Records.Filling(lug, id, [animal], act.Now);
                records.Fillings.Add(filling);
                records.WeighIns.Add(WeighIn.OfFilling(
                    WeighInKind.LeanTrim, filling, Weight.FromPounds(33m), new Reading("Bench", ScaleDivision.HundredthPound), act.Now, act.Hand.Id));
                records.SaveChanges();
            }

            return records.AgreeSplit(Agreed, Weight.FromPounds(30m), act);
        }, Hand);
        Write((records, act) =>
        {
            records.Jobs.Single(job => job.Id == Agreed).Made(act.Now);
            return Outcome.Done();
        }, Hand);
    }

    public int Clerk { get; }

    public Hand Hand => new(Clerk, "Counter");

    /// <summary>Ten days on the rail, past the guidance for deer.</summary>
    public int Hung { get; }

    public int Held { get; }

    public int Fresh { get; }

    public int NoDetails { get; }

    /// <summary>Thirty pounds of lean in a lug that bears the job's id.</summary>
    public int Cut { get; }

    public int Agreed { get; }

    public int NumberOf(int jobId) => Read(records => records.Jobs.Where(job => job.Id == jobId).Select(job => job.Number).Single());

    public Ticket TicketOf(TicketKind kind, int targetId) => Read(records => records.Tickets.Single(ticket => ticket.Kind == kind && ticket.TargetId == targetId && ticket.VoidedAt == null));

    private int TakeIn(string owner, string phone, string tag, DiseaseTest test, int daysAgo, bool isWhole = true)
    {
        var today = DateOnly.FromDateTime(Clock.GetUtcNow().UtcDateTime);
        var taken = new TakenAnimal(Species.WhiteTailDeer, ArrivalState.FieldDressed) { Tag = tag, DiseaseTest = test, ArrivalWeight = Weight.FromPounds(120m) };
        var outcome = Write((records, act) => records.TakeIn(
            new DropOff(
                new TakenOwner(null, owner, phone, null, null, false), [], [taken],
                new TakenOrder([], [], today.AddDays(12 - daysAgo), Pooling.Own, PackWrap.Vacuum, false, null), Money.FromCents(5_000), PaymentMethod.Cash, isWhole),
            today, act), Hand);
        return int.Parse(outcome.Result, System.Globalization.CultureInfo.InvariantCulture);
    }
}
