using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;
using ProcessorDesk.Trade.Tickets;

namespace ProcessorDesk.Web.Pages.Counter;

/// <summary>A job as its papers show it: whose, what of, what for, under which codes. Read in six queries.</summary>
public sealed record JobPapers(
    int Id, int Number, string Owner, DateTime TakenAt, DateOnly? PromisedFor, bool DetailsComplete, bool NoPork, string? Notes, Pooling Pooling, PackWrap Wrap,
    int SheetRevision)
{
    public IReadOnlyList<PaperAnimal> Animals { get; private init; } = [];

    public IReadOnlyList<CutOrderLine> Cuts { get; private init; } = [];

    public IReadOnlyList<PaperAsk> Asks { get; private init; } = [];

    public IReadOnlyList<Payment> Deposits { get; private init; } = [];

    /// <summary>Holds on the job itself; those of an animal stand with it.</summary>
    public IReadOnlyList<(HoldReason Reason, string? Note)> Holds { get; private init; } = [];

    public TicketCode? Claim { get; private init; }

    public IEnumerable<(HoldReason Reason, string? Note)> AllHolds => Holds.Concat(Animals.SelectMany(animal => animal.Holds)).Distinct();

    public static JobPapers? Of(RecordsContext records, int id)
    {
        var head = records.Jobs.AsNoTracking().Where(job => job.Id == id)
            .Select(job => new JobPapers(
                job.Id, job.Number, job.Owner.Name, job.TakenAt, job.PromisedFor, job.DetailsComplete, job.NoPork, job.Notes, job.Pooling, job.Wrap, job.SheetRevision))
            .SingleOrDefault();
        if (head is null)
            return null;
        var order = records.Jobs.AsNoTracking().Include(job => job.CutOrder).Include(job => job.Asks).ThenInclude(ask => ask.Product)
            .AsSplitQuery().Single(job => job.Id == id);
        var animals = PaperAnimal.Of(records, id);
        return head with
        {
            Animals = animals,
            Cuts = [.. order.CutOrder.OrderBy(line => line.Position)],
            Asks = [.. order.Asks.OrderBy(ask => ask.Position).Select(ask => new PaperAsk(ask.Product.Name, ask.Kind, ask.Amount, ask.Percent))],
            Deposits = [.. records.Payments.AsNoTracking().Where(payment => payment.JobId == id && payment.IsDeposit)],
            Holds = [.. records.Holds.AsNoTracking().Standing().Where(hold => hold.JobId == id).Select(hold => new { hold.Reason, hold.Note }).AsEnumerable().Select(hold => (hold.Reason, hold.Note))],
            Claim = PaperAnimal.CodeFor(records, TicketKind.Claim, id),
        };
    }
}

/// <summary>A grind ask in words.</summary>
public sealed record PaperAsk(string Product, AskKind Kind, Weight Amount, Proportion Percent)
{
    public string Wanted(ScaleDivision division) => Kind switch
    {
        AskKind.OwnLean => $"{division.Print(Amount)} of own meat",
        AskKind.Finished => $"{division.Print(Amount)} finished",
        AskKind.Percent => $"{Percent.Print()} of the lean",
        AskKind.Rest => "the rest",
    };
}
