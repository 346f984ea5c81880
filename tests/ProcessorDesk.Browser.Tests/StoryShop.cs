using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Tickets;
using ProcessorDesk.Web.Door;
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
            Rest(records, act, "Ring sausage");
            Rest(records, act, "Summer sausage");
            records.Lugs.AddRange(Tares.Select((tare, i) => new Lug(i + 1, Weight.FromPounds(tare), act.Now)));
            return Outcome.Done();
        });
        Clerk = StaffOf(StaffRole.Clerk);
        Cutter = StaffOf(StaffRole.Cutter);
        Kitchen = StaffOf(StaffRole.Kitchen);
    }

    public int Clerk { get; }

    public int Cutter { get; }

    public int Kitchen { get; }

    /// <summary>The lugs are free again for the next run of the story.</summary>
    public void EmptyLugs() => Write((records, act) =>
    {
        foreach (var filling in records.Fillings.Where(one => one.EmptiedAt == null).ToList())
            filling.Empty(act.Now);
        return Outcome.Done();
    });

    /// <summary>The same formula once more, with four hours of rest for its cure.</summary>
    private static void Rest(RecordsContext records, Act act, string name)
    {
        var product = records.Products.Include(one => one.Formulas).ThenInclude(formula => formula.Ingredients).Single(one => one.Name == name);
        var old = product.Formulas.Single();
        product.Reformulate(new FormulaVersion(
            act.Now, old.LeanShare, old.AddedFat, old.AddedFatIsPork, (old.LossLow, old.LossTypical, old.LossHigh), old.SmallestRun, old.Step,
            old.Ingredients.Select(line => new FormulaIngredient(line.Position, line.Name, line.Basis, line.Amount, line.Nitrite, line.Nitrate, line.IsPork)),
            restMinutes: 240));
    }

    /// <summary>The link the shop gives the owner, as it is derived from its key.</summary>
    public string OwnersLinkTo(int job)
    {
        var (number, generation) = Read(records => records.Jobs.Where(one => one.Id == job).Select(one => ValueTuple.Create(one.Number, one.LinkGeneration)).Single());
        return $"{OwnerLinks.Folder}/{Services.GetRequiredService<OwnerLinks>().Of(number, generation)}";
    }

    public string ClaimOf(int job) => TicketCode.FromNumber(Read(records => records.Tickets.Single(ticket => ticket.Kind == TicketKind.Claim && ticket.TargetId == job).Number)).Print();

    public int[] AnimalsOf(int job) => Read(records => records.Shares.Where(share => share.JobId == job).OrderBy(share => share.AnimalId).Select(share => share.AnimalId).ToArray());
}
