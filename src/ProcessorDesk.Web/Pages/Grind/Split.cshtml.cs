using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade.Yields;

namespace ProcessorDesk.Web.Pages.Grind;

/// <summary>The lean of one job over what its owner asked for: what it allows, what changed and why, the cure; agreed here.</summary>
public sealed class SplitModel(RecordsContext records, Verbs verbs, ShopDay day) : StationPage
{
    [BindProperty]
    public AgreeInput Agreeing { get; set; } = new();

    [BindProperty]
    public WithdrawInput Withdrawing { get; set; } = new();

    public JobHead Job { get; private set; } = null!;

    public ScaleDivision Division => day.Settings.BenchDivision;

    public Weight Lean { get; private set; }

    /// <summary>What the lean is held against; null where nothing recorded leads to a forecast.</summary>
    public YieldStatement? Yield { get; private set; }

    public IReadOnlyList<SplitLine> Lines { get; private set; } = [];

    public IReadOnlyList<Hold> Holds { get; private set; } = [];

    public AgreedHead? Agreed { get; private set; }

    public Weight AddedFat => Division.Sum(Lines.Select(line => line.Given.AddedFat));

    public Weight Green => Division.Sum(Lines.Select(line => line.Given.Green));

    public bool MayOpen(string folder) => SignedIn.MayOpen(folder);

    public IActionResult OnGet(int id) => Load(id) ? Page() : NotFound();

    public IActionResult OnPostAgree(int id)
    {
        var shown = Weight.FromMilligrams(Agreeing.LeanMilligrams);
        var outcome = verbs.Run("agree the split", new Hand(SignedIn.StaffId, SignedIn.Station), FormKey, act => records.AgreeSplit(id, shown, act));
        return After(outcome, id, "The split is agreed. The kitchen can plan it.");
    }

    public IActionResult OnPostWithdraw(int id)
    {
        var outcome = verbs.Run("withdraw the split", new Hand(SignedIn.StaffId, SignedIn.Station), FormKey, act => records.WithdrawSplit(id, Withdrawing.Because, act));
        return After(outcome, id, "The split is withdrawn. Change the order, then agree a new one.");
    }

    private IActionResult After(Outcome outcome, int id, string done)
    {
        if (outcome.IsDone)
        {
            Say(done);
            return RedirectToPage(new { id });
        }

        ModelState.Add(outcome.Findings, nameof(Withdrawing));
        return OnGet(id);
    }

    private bool Load(int id)
    {
        var found = (
            from job in records.Jobs.AsNoTracking().Where(job => job.Id == id)
            join standing in records.AgreedSplits.Where(split => split.WithdrawnAt == null) on job.Id equals standing.JobId into splits
            from split in splits.DefaultIfEmpty()
            select new
            {
                Head = new JobHead(job.Id, job.Number, job.Owner.Name, job.Pooling, job.NoPork, job.PromisedFor, job.CuttingDoneAt != null, job.HandedOverAt != null),
                Split = split,
                AgreedBy = records.Staff.Where(staff => staff.Id == split.AgreedById).Select(staff => staff.Name).FirstOrDefault(),
                Asks = job.Asks.ToList(),
            })
            .AsSingleQuery()
            .SingleOrDefault();
        if (found is null)
            return false;
        Job = found.Head;
        Holds = [.. records.Holds.AsNoTracking().Standing().OnJob(records, id).Include(hold => hold.Animal)];
        var weights = records.WeightsOf(id, Division);
        Lean = weights.Lean;
        Yield = LeanYield.Of(weights, Division);
        Agreed = found.Split is { } agreed ? new AgreedHead(agreed.AgreedAt, found.AgreedBy!) : null;
        Lines = found.Split is { } kept ? Kept(kept.Id) : Proposed([.. found.Asks.OrderBy(ask => ask.Position)]);
        return true;
    }

    private IReadOnlyList<SplitLine> Proposed(IReadOnlyList<GrindOrder> asks) =>
        [.. records.PlanGrind(asks, Lean, Division).Lines.Select(line => SplitLine.Of(line, Division, day.Settings.CureDivision))];

    private IReadOnlyList<SplitLine> Kept(int splitId) =>
    [
        .. records.GrindAllotments.AsNoTracking()
            .Where(one => one.AgreedSplitId == splitId)
            .OrderBy(one => one.Position)
            .Include(one => one.FormulaVersion).ThenInclude(formula => formula.Product)
            .Include(one => one.FormulaVersion).ThenInclude(formula => formula.Ingredients)
            .AsEnumerable()
            .Select(one => SplitLine.Of(one, day.Settings.CureDivision))
    ];

    public string Date(DateOnly date) => day.Date(date);

    public string Moment(DateTime utc) => day.Moment(utc);

    public sealed record JobHead(
        int Id, int Number, string Owner, Pooling Pooling, bool NoPork, DateOnly? PromisedFor, bool IsCut, bool IsHandedOver);

    public sealed record AgreedHead(DateTime At, string By);

    public sealed class AgreeInput
    {
        /// <summary>The lean the person was shown.</summary>
        public long LeanMilligrams { get; set; }
    }

    public sealed class WithdrawInput
    {
        public string? Because { get; set; }
    }
}
