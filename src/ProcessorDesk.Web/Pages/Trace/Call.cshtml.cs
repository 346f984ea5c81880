using Microsoft.AspNetCore.Mvc;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Trace;

/// <summary>A call to one owner about what was traced, written down while it is fresh.</summary>
public sealed class CallModel(RecordsContext records, Verbs verbs, ShopDay shop) : StationPage
{
    [BindProperty]
    public InputModel Input { get; set; } = new();

    public TraceView View { get; private set; } = null!;

    public TracedJob Job { get; private set; } = null!;

    public string Back => TraceAddress.Page("Of", View.Trace.Start);

    public IReadOnlyList<TracedBox> Boxes => [.. View.Trace.BoxesOf.Where(box => box.JobId == Job.Id)];

    public static IReadOnlyList<Choice> Outcomes { get; } =
    [
        new(nameof(CallOutcome.Told), Wording.Of(CallOutcome.Told), "Spoke to the owner"),
        new(nameof(CallOutcome.MessageLeft), Wording.Of(CallOutcome.MessageLeft), "Call again"),
        new(nameof(CallOutcome.NoAnswer), Wording.Of(CallOutcome.NoAnswer), "Call again"),
        new(nameof(CallOutcome.WrongNumber), Wording.Of(CallOutcome.WrongNumber), "Find another way"),
    ];

    public IActionResult OnGet(string kind, int id, int job) => Load(kind, id, job) ? Page() : NotFound();

    public IActionResult OnPost(string kind, int id, int job)
    {
        if (!Load(kind, id, job))
            return NotFound();
        if (!ModelState.IsValid)
            return Page();
        var outcome = verbs.Run("log a call", Hand, FormKey, act => records.LogCall(new CallNote(job, View.Trace.Start, Input.Outcome, Input.Words), act));
        ModelState.Add(outcome.Findings);
        if (!ModelState.IsValid)
            return Page();
        Say($"The call to {Job.Owner} is in the log.");
        return LocalRedirect(Back);
    }

    private bool Load(string kind, int id, int job)
    {
        if (TraceAddress.Read(kind, id) is not { } start || records.TraceOf(start) is not { } trace || trace.ToTell.SingleOrDefault(one => one.Id == job) is not { } found)
            return false;
        (View, Job) = (new TraceView(trace, shop), found);
        return true;
    }

    public sealed class InputModel
    {
        public CallOutcome? Outcome { get; set; }

        public string Words { get; set; } = "";
    }
}
