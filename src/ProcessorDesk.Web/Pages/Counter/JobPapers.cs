using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;
using ProcessorDesk.Trade.Tickets;

namespace ProcessorDesk.Web.Pages.Counter;

/// <summary>A job as its papers show it: whose, what of, what for, under which codes. Read in six queries.</summary>
public sealed record JobPapers(Job Job, IReadOnlyList<PaperAnimal> Animals, IReadOnlyList<Payment> Deposits, IReadOnlyList<Hold> Holds, TicketCode? Claim)
{
    /// <summary>Holds on the job itself and on each of its animals, each reason once.</summary>
    public IReadOnlyList<Hold> AllHolds => [.. Holds.Concat(Animals.SelectMany(animal => animal.Holds)).DistinctBy(hold => hold.Reason)];

    public IEnumerable<CutOrderLine> Cuts => Job.CutOrder.OrderBy(line => line.Position);

    public IEnumerable<GrindOrder> Asks => Job.Asks.OrderBy(ask => ask.Position);

    public static JobPapers? Of(RecordsContext records, int id)
    {
        var job = records.Jobs.AsNoTracking()
            .Include(one => one.Owner).Include(one => one.CutOrder).Include(one => one.Asks).ThenInclude(ask => ask.Product)
            .SingleOrDefault(one => one.Id == id);
        if (job is null)
            return null;
        var animals = PaperAnimal.Of(records, id, out var claim);
        return new JobPapers(
            job, animals,
            [.. records.Payments.AsNoTracking().Where(payment => payment.JobId == id && payment.IsDeposit)],
            [.. records.Holds.AsNoTracking().Standing().Where(hold => hold.JobId == id)],
            claim);
    }

    /// <summary>"25.00 lb of own meat".</summary>
    public static string Wanted(GrindOrder ask, ScaleDivision division) => ask.Kind switch
    {
        AskKind.OwnLean => $"{division.Print(ask.Amount)} of own meat",
        AskKind.Finished => $"{division.Print(ask.Amount)} finished",
        AskKind.Percent => $"{ask.Percent.Print()} of the lean",
        AskKind.Rest => "the rest",
    };

    /// <summary>"Steaks, 3/4 in, 4 to a pack".</summary>
    public static string Wanted(CutOrderLine line) => string.Join(", ", new[]
    {
        CutMenu.CutName(line.Cut), line.Detail, line.PerPack is { } pieces ? $"{pieces} to a pack" : null,
    }.OfType<string>());
}
