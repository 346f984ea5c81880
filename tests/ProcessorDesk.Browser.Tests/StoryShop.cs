using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Tickets;
using ProcessorDesk.Web.Tests.Harness;

namespace ProcessorDesk.Browser.Tests;

/// <summary>An empty shop with its products, prices, staff and four lugs.</summary>
public sealed class StoryShop : ShopUnderTest
{
    /// <summary>What the lugs weigh empty, lug 1 first.</summary>
    public static readonly decimal[] Tares = [3.10m, 3.10m, 2.86m, 3.10m];

    public StoryShop()
    {
        TrimmedJob.Prepare(this);
        Write((records, act) =>
        {
            records.Lugs.AddRange(Tares.Select((tare, i) => new Lug(i + 1, Weight.FromPounds(tare), act.Now)));
            return Outcome.Done();
        });
        Clerk = StaffOf(StaffRole.Clerk);
        Cutter = StaffOf(StaffRole.Cutter);
    }

    public int Clerk { get; }

    public int Cutter { get; }

    /// <summary>The lugs are free again for the next run of the story.</summary>
    public void EmptyLugs() => Write((records, act) =>
    {
        foreach (var filling in records.Fillings.Where(one => one.EmptiedAt == null).ToList())
            filling.Empty(act.Now);
        return Outcome.Done();
    });

    public string ClaimOf(int job) => TicketCode.FromNumber(Read(records => records.Tickets.Single(ticket => ticket.Kind == TicketKind.Claim && ticket.TargetId == job).Number)).Print();

    public int[] AnimalsOf(int job) => Read(records => records.Shares.Where(share => share.JobId == job).OrderBy(share => share.AnimalId).Select(share => share.AnimalId).ToArray());
}
