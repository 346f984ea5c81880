using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;
using ProcessorDesk.Web.Pages.Shared;

namespace ProcessorDesk.Web.Pages.Cutting;

/// <summary>The cut sheet at arm's length: what must not be done, what is to be done, what was weighed, what is still missing.</summary>
public sealed class SheetModel(RecordsContext records, Verbs verbs, ShopDay shop) : StationPage
{
    public SheetContent Job { get; private set; } = null!;

    public IReadOnlyList<StandingHold> Holds { get; private set; } = [];

    /// <summary>Why cutting may not start; empty once it has.</summary>
    public IReadOnlyList<Finding> Stopping { get; private set; } = [];

    public IReadOnlyList<TableWeighIn> WeighIns { get; private set; } = [];

    public TableBalance? Balance { get; private set; }

    public ShopDay Shop => shop;

    public bool IsOnTable => Job is { StartedAt: not null, DoneAt: null };

    /// <summary>Open lugs of the job, from the weights in them.</summary>
    public IReadOnlyList<OpenLug> Lugs { get; private set; } = [];

    public int Unticked => Job.Animals.Sum(animal => CutMenu.Checklist.Count(item => animal.TickOf(item.Code) is null));

    public IActionResult OnGet(int id) => Load(id) ? Page() : NotFound();

    public IActionResult OnPostStart(int id) => Do(id, "start cutting", "Cutting has started. The cut order is locked.", (job, act) =>
    {
        var stopping = records.StoppingKnife(id);
        return stopping.Count > 0 ? stopping : [.. Refusal(job.StartCutting(act.Now))];
    });

    public IActionResult OnPostFinish(int id) => Do(id, "finish cutting", "Cutting is finished. The trim goes on to the grind.", (job, act) => [.. Refusal(job.FinishCutting(act.Now))]);

    public IActionResult OnPostReopen(int id) => Do(id, "bring a job back to the table", "Back on the table.", (job, _) => [.. Refusal(job.ReopenCutting())]);

    /// <summary>Ticks a thing that was looked to, or takes the tick away.</summary>
    public IActionResult OnPostTick(int id, int animal, string item) => Do(id, "tick the checklist", "", (_, act) =>
    {
        if (CutMenu.Checklist.All(known => known.Code != item) || !records.Shares.Any(share => share.JobId == id && share.AnimalId == animal))
            return [new Finding("", "This is not on the checklist of this job. Open the sheet again.")];
        if (records.ChecklistTicks.Find(animal, item) is { } ticked)
            records.ChecklistTicks.Remove(ticked);
        else
            records.ChecklistTicks.Add(new ChecklistTick(animal, item, act.Now, act.Hand.Id));
        return [];
    });

    /// <summary>The lug is free again: its meat went on.</summary>
    public IActionResult OnPostEmpty(int id, int filling) => Do(id, "empty a lug", "The lug is free again.", (_, act) =>
    {
        if (records.Fillings.Include(one => one.Lug).SingleOrDefault(one => one.Id == filling && one.JobId == id) is not { } lug)
            return [new Finding("", "This lug is not one of this job. Open the sheet again.")];
        lug.Empty(act.Now);
        return [];
    });

    private IActionResult Do(int id, string verb, string said, Func<Job, Act, IReadOnlyList<Finding>> work)
    {
        if (!records.Jobs.Any(job => job.Id == id))
            return NotFound();
        var outcome = verbs.Run(verb, Hand, FormKey, act =>
        {
            var findings = work(records.Jobs.Single(job => job.Id == id), act);
            return findings.Count > 0 ? Outcome.Refused(findings) : Outcome.Done(id);
        });
        if (outcome.IsDone)
        {
            if (said != "")
                Say(said);
            return RedirectToPage(null, null, new { id }, said == "" ? "checklist" : null);
        }

        ModelState.Add(outcome.Findings);
        return Load(id) ? Page() : NotFound();
    }

    private static IEnumerable<Finding> Refusal(Finding? finding) => finding is null ? [] : [finding];

    private bool Load(int id)
    {
        if (SheetContent.Find(records, id, shop) is not { } job)
            return false;
        Job = job;
        Holds = StandingHold.Of(records, records.Holds.AsNoTracking().Standing().OnJob(records, id), shop);
        Stopping = job.StartedAt is null ? records.StoppingKnife(id) : [];
        if (job.StartedAt is null)
            return true;
        WeighIns = TableWeighIn.Of(records, id, shop);
        Balance = TableBalance.Of(job.Weights(WeighIns.Where(one => one.Struck is null).Select(one => one.Weighed), shop.Settings.BenchDivision), shop.Settings.Tolerance, shop.Settings.BenchDivision);
        Lugs =
        [
            .. records.Fillings.AsNoTracking().Open().Where(filling => filling.JobId == id).OrderBy(filling => filling.Lug.Number)
                .Select(filling => new OpenLug(
                    filling.Id, filling.Lug.Number,
                    filling.Animals.Select(animal => records.Animals.Where(known => known.Id == animal.AnimalId).Select(known => known.Tag).FirstOrDefault() ?? "no tag").ToList(),
                    records.Tickets.Where(ticket => ticket.Kind == TicketKind.Filling && ticket.TargetId == filling.Id).Select(ticket => (long?)ticket.Number).FirstOrDefault()))
        ];
        return true;
    }

    public sealed record OpenLug(int FillingId, int Number, IReadOnlyList<string> Tags, long? TicketNumber)
    {
        public string Code => TicketNumber is { } number ? Trade.Tickets.TicketCode.FromNumber(number).Print() : "no ticket yet";
    }
}
