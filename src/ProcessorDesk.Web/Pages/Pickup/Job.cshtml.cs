using Microsoft.AspNetCore.Mvc;

namespace ProcessorDesk.Web.Pages.Pickup;

/// <summary>One job at the counter going out: what is charged and paid, what is ticked off and to whom it goes, what is still to come.</summary>
public sealed class JobModel(RecordsContext records, Verbs verbs, ShopDay day) : StationPage
{
    [BindProperty]
    public IssueInput Issuing { get; set; } = new();

    [BindProperty]
    public PaymentInput Paying { get; set; } = new();

    [BindProperty]
    public HandOverInput HandingOver { get; set; } = new();

    [BindProperty]
    public PartInput Giving { get; set; } = new();

    public PickupJob Job { get; private set; } = null!;

    /// <summary>What the last ticket ticked off, in words.</summary>
    public string? Ticked { get; private set; }

    public IActionResult OnGet(int id) => Load(id) ? Page() : NotFound();

    public IActionResult OnPostReckon(int id) => OnGet(id);

    public IActionResult OnPostIssue(int id)
    {
        var extras = ExtrasTyped();
        return ModelState.IsValid
            ? After(id, "issue an invoice", act => records.IssueInvoice(id, day.Today, extras, act), "The invoice is issued. Print it below.", nameof(Issuing))
            : OnGet(id);
    }

    public IActionResult OnPostCredit(int id, int invoice) =>
        After(id, "credit an invoice", act => records.CreditInvoice(invoice, act), "The invoice is credited. It can be issued again.", "");

    public IActionResult OnPostPay(int id)
    {
        var amount = ModelState.Read(MoneyText.Parse(Paying.Amount), "Paying.Amount");
        return ModelState.IsValid
            ? After(
                id, "take a payment", act => records.TakePayment(id, Paying.IsRefund ? -amount : amount, Paying.Method, Paying.Note, act),
                $"{(Paying.IsRefund ? "Refund" : "Payment")} of {amount.Print()} is booked.", nameof(Paying))
            : OnGet(id);
    }

    public IActionResult OnPostGive(int id) => After(id, "give a part back", act => records.GivePart(Giving.PartId, Giving.PartTo, act), "The part is given out.", nameof(Giving));

    /// <summary>One ticket more, ticked off; what was ticked before stays so.</summary>
    public IActionResult OnPostTick(int id)
    {
        if (!Load(id))
            return NotFound();
        (Ticked, var refusal) = TickingOff.Tick(records, day, Job, HandingOver);
        if (refusal is null)
        {
            ModelState.ShowChanged(nameof(HandingOver));
            HandingOver.Scan = "";
        }
        else
        {
            ModelState.AddModelError("HandingOver.Scan", refusal);
        }

        return IsLive ? Partial("_Going", this) : Page();
    }

    /// <summary>What stays here by the ticks so far.</summary>
    public IActionResult OnPostStays(int id) => !Load(id) ? NotFound() : IsLive ? Partial("_Stays", this) : Page();

    public IActionResult OnPostHandOver(int id)
    {
        // A scanner ends with Enter, which sends the form: a ticket in the field is ticked off, and nothing leaves by it.
        if (!string.IsNullOrWhiteSpace(HandingOver.Scan))
            return OnPostTick(id);
        var order = new HandOverOrder(id, HandingOver.Boxes, HandingOver.Parts, HandingOver.To, HandingOver.Owing);
        return After(id, "hand over", act => records.HandOver(order, act), $"Handed over to {HandingOver.To?.Trim()}. Print the summary below.", nameof(HandingOver));
    }

    private IActionResult After(int id, string verb, Func<Act, Outcome> work, string done, string prefix)
    {
        var outcome = verbs.Run(verb, Hand, FormKey, work);
        if (outcome.IsDone)
        {
            Say(done);
            return RedirectToPage(new { id });
        }

        ModelState.Add(outcome.Findings, prefix);
        return OnGet(id);
    }

    private bool Load(int id)
    {
        if (PickupJob.Read(records, day, id, ExtrasTyped()) is not { } job)
            return false;
        Job = job;
        foreach (var price in job.Extras)
            Issuing.Extras.TryAdd(price.Id, "");
        return true;
    }

    private Dictionary<int, int> ExtrasTyped()
    {
        var extras = new Dictionary<int, int>();
        foreach (var (priceId, typed) in Issuing.Extras.Where(extra => !string.IsNullOrWhiteSpace(extra.Value)))
        {
            var field = $"Issuing.Extras[{priceId}]";
            if (CountText.Parse(typed).Try(out var count, out var problem))
                extras[priceId] = count;
            else if (ModelState[field]?.Errors.Count is null or 0)
                ModelState.AddModelError(field, problem);
        }

        return extras;
    }

    public IEnumerable<Choice> Boxes => Job.Goods.BoxesHere.Select(box => new Choice(
        $"{box.Id}", $"Box {box.Number}: {box.InWords}", string.Join(", ", new[] { day.Print(box.Net), box.Place, box.Ticket?.Print() }.OfType<string>())));

    public IEnumerable<Choice> Parts => Job.Goods.PartsHere.Select(part => new Choice(
        $"{part.Id}", part.InWords, string.Join(", ", new[] { part.Note, part.Ticket?.Print() }.OfType<string>())));

    /// <summary>What its owner would not get yet if what is ticked went out now.</summary>
    public IEnumerable<Missing> Stays =>
        (Job.Missing with { Goods = Job.Goods.After(HandingOver.Boxes, HandingOver.Parts, day.Now) })
        .At(day.Now, place => place is null ? "still in the freezer" : $"still in the freezer, {place}");

    public string Date(DateOnly date) => day.Date(date);

    public string Moment(DateTime utc) => day.Moment(utc);

    public string Print(Weight weight) => day.Print(weight);

    public sealed class IssueInput
    {
        /// <summary>How many of each extra, as typed, by the id of its price.</summary>
        public Dictionary<int, string?> Extras { get; set; } = [];
    }

    public sealed class PaymentInput
    {
        public string? Amount { get; set; }

        public PaymentMethod Method { get; set; } = PaymentMethod.Cash;

        public bool IsRefund { get; set; }

        public string? Note { get; set; }
    }

    public sealed class PartInput
    {
        public int PartId { get; set; }

        public string? PartTo { get; set; }
    }
}
