using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.Filters;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Counter;

/// <summary>Changes a kept order as far as it is not locked, or completes one that was left for later.</summary>
public sealed class OrderModel(RecordsContext records, Verbs verbs, ShopDay shop) : OrderPage
{
    [BindProperty]
    public OrderInput Input { get; set; } = new();

    [BindProperty]
    public HoldInput Hold { get; set; } = new();

    public JobPapers Papers { get; private set; } = null!;

    /// <summary>The holds on the whole job; those of an animal stand on its own page.</summary>
    public HoldList Holds { get; private set; } = null!;

    public int? ReleaseOf { get; private set; }

    /// <summary>The order as somebody else saved it meanwhile; null where nobody did.</summary>
    public IReadOnlyList<(string What, string Wanted)>? Theirs { get; private set; }

    protected override OrderInput Order => Input;

    private int JobId => int.Parse((string)RouteData.Values["job"]!, System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>Every handler stands on the job.</summary>
    public override void OnPageHandlerExecuting(PageHandlerExecutingContext context)
    {
        if (JobPapers.Of(records, JobId) is { } papers)
            Papers = papers;
        else
            context.Result = NotFound();
    }

    public IActionResult OnGet()
    {
        Input = KeptOrder.Of(Papers, shop.Settings.BenchDivision);
        Version = Papers.Job.Version;
        return Shown();
    }

    public IActionResult OnPost()
    {
        Input.Offered = Offer.Of(records);
        // A promise that was missed may stand as it is while something else is changed.
        var earliest = Papers.Job.PromisedFor is { } promised && promised < shop.Today ? promised : shop.Today;
        var facts = Input.Read(ModelState, earliest, KeptOrder.Animals(Papers).Select(animal => animal.Typed), "Input");
        if (!ModelState.IsValid)
            return Shown();
        var outcome = verbs.Run("change an order", Hand, FormKey, act => Change(facts));
        if (outcome.IsDone)
        {
            Say(outcome.Result == "" ? "The order stands as it was." : outcome.Result);
            return RedirectToPage(new { job = JobId });
        }

        if (outcome.IsStale)
            ShowTheirs();
        ModelState.Add(outcome.Findings);
        return Shown();
    }

    public IActionResult OnPostHold() => Finish("put a job on hold", "The whole job is on hold.", act =>
    {
        records.Holds.Add(Records.Hold.OnJob(records.Jobs.Single(job => job.Id == JobId), Hold.Reason, Hold.Note, act.Now, act.Hand.Id));
        return Outcome.Done(JobId);
    });

    public IActionResult OnPostRelease(int hold)
    {
        ReleaseOf = hold;
        return Finish("release a hold", "The hold is released.", act => HoldActs.Release(records, act, hold, SignedIn.Role, Hold.Because));
    }

    private IActionResult Finish(string verb, string said, Func<Act, Outcome> work)
    {
        var outcome = verbs.Run(verb, Hand, FormKey, work);
        if (outcome.IsDone)
        {
            Say(said);
            return RedirectToPage(new { job = JobId });
        }

        ModelState.Add(outcome.Findings, "Hold");
        return OnGet();
    }

    private Outcome Change(TakenOrder facts)
    {
        var job = records.Jobs.Include(one => one.CutOrder).Include(one => one.Asks).Single(one => one.Id == JobId);
        if (job.Version != Version)
            return Outcome.Stale();
        var products = Products();
        var (before, wasComplete) = (OrderLines.Of(job, shop, products), job.DetailsComplete);
        var findings = facts.WriteOn(job);
        if (findings.Count > 0)
            return Outcome.Refused(findings);
        job.CompleteDetails();
        if (wasComplete && before.SequenceEqual(OrderLines.Of(job, shop, products)))
            return Outcome.Done("");
        if (wasComplete)
            job.ReviseSheet();
        return Outcome.Done(wasComplete ? $"The order is changed. A cut sheet printed before is out of date: this is revision {job.SheetRevision}." : "The order is complete.");
    }

    private void ShowTheirs()
    {
        var job = records.Jobs.AsNoTracking().Include(one => one.CutOrder).Include(one => one.Asks).Single(one => one.Id == JobId);
        Theirs = OrderLines.Of(job, shop, Products());
        // The next press is made knowing what the other hand saved.
        Version = job.Version;
        ModelState.Remove(nameof(Version));
    }

    private Dictionary<int, string> Products() => records.Products.AsNoTracking().ToDictionary(product => product.Id, product => product.Name);

    protected override void Load()
    {
        Holds = new([.. records.Holds.AsNoTracking().Where(hold => hold.JobId == JobId)], SignedIn.Role == StaffRole.Manager, Hold, "the whole job");
        (Input.CutsLocked, Input.AsksLocked) = (Papers.Job.CutsLocked, Papers.Job.AsksLocked);
        if (Input.Offered.Count == 0)
            Input.Offered = Offer.Of(records);
        Outlook = Outlook.Of(records, shop, Input, KeptOrder.Animals(Papers), Papers.Job.PriceListId);
    }
}
