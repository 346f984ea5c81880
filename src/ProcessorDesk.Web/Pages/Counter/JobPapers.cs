using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;
using ProcessorDesk.Trade.Tickets;

namespace ProcessorDesk.Web.Pages.Counter;

/// <summary>A job as its papers show it: whose, what of, what for, under which codes. Read in two queries.</summary>
public sealed record JobPapers(
    Job Job, IReadOnlyList<JobPapers.AskLine> Asks, IReadOnlyList<PaperAnimal> Animals, IReadOnlyList<Payment> Deposits, IReadOnlyList<Hold> Holds, TicketCode? Claim)
{
    /// <summary>Holds on the job itself and on each of its animals, each reason once.</summary>
    public IReadOnlyList<Hold> AllHolds => [.. Holds.Concat(Animals.SelectMany(animal => animal.Holds)).DistinctBy(hold => hold.Reason)];

    public IEnumerable<CutOrderLine> Cuts => Job.CutOrder.OrderBy(line => line.Position);

    public static JobPapers? Of(RecordsContext records, int id)
    {
        var found = records.Jobs.AsNoTracking()
            .Include(job => job.Owner).Include(job => job.CutOrder)
            .Where(job => job.Id == id)
            .Select(job => new
            {
                Job = job,
                Asks = job.Asks.Select(ask => new AskLine(ask, records.Products.Where(product => product.Id == ask.ProductId).Select(product => product.Name).First())).ToList(),
                Deposits = records.Payments.Where(payment => payment.JobId == job.Id && payment.IsDeposit).ToList(),
                Holds = records.Holds.Where(hold => hold.JobId == job.Id && hold.ReleasedAt == null).ToList(),
                Claim = records.Tickets.Where(ticket => ticket.Kind == TicketKind.Claim && ticket.TargetId == job.Id && ticket.VoidedAt == null)
                    .Max(ticket => (long?)ticket.Number),
            })
            .AsSingleQuery()
            .SingleOrDefault();
        return found is null ? null : new JobPapers(
            found.Job, [.. found.Asks.OrderBy(line => line.Ask.Position)], PaperAnimal.Of(records, id), found.Deposits, found.Holds,
            found.Claim is { } number ? TicketCode.FromNumber(number) : null);
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

    public sealed record AskLine(GrindOrder Ask, string Product);
}
