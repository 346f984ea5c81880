using Microsoft.AspNetCore.Mvc;

namespace ProcessorDesk.Web.Pages.Pickup;

/// <summary>One job at the counter going out: what it costs, what was paid, what goes back, who takes it.</summary>
public sealed class JobModel(RecordsContext records, Verbs verbs, ShopDay day) : StationPage
{
    [BindProperty]
    public IssueInput Issuing { get; set; } = new();

    [BindProperty]
    public PaymentInput Paying { get; set; } = new();

    [BindProperty]
    public PartInput Giving { get; set; } = new();

    [BindProperty]
    public HandOverInput HandingOver { get; set; } = new();

    public PickupJob Job { get; private set; } = null!;

    public IActionResult OnGet(int id) => Load(id) ? Page() : NotFound();

    public IActionResult OnPostReckon(int id) => OnGet(id);

    public IActionResult OnPostIssue(int id)
    {
        var extras = ExtrasTyped();
        if (!ModelState.IsValid)
            return OnGet(id);
        return After(Run("issue an invoice", act => records.IssueInvoice(id, day.Today, extras, act)), id, "The invoice is issued. Print it below.", nameof(Issuing));
    }

    public IActionResult OnPostCredit(int id, int invoice) =>
        After(Run("credit an invoice", act => records.CreditInvoice(invoice, act)), id, "The invoice is credited. It can be issued again.", "");

    public IActionResult OnPostPay(int id)
    {
        var amount = ModelState.Read(MoneyText.Parse(Paying.Amount), "Paying.Amount");
        if (!ModelState.IsValid)
            return OnGet(id);
        return After(
            Run("take a payment", act => records.TakePayment(id, Paying.IsRefund ? -amount : amount, Paying.Method, Paying.Note, act)),
            id, $"{(Paying.IsRefund ? "Refund" : "Payment")} of {amount.Print()} is booked.", nameof(Paying));
    }

    public IActionResult OnPostGive(int id) =>
        After(Run("give a part back", act => records.GivePart(Giving.PartId, Giving.PartTo, act)), id, "The part is given back.", nameof(Giving));

    public IActionResult OnPostHandOver(int id) =>
        After(Run("hand over", act => records.HandOver(new HandOverOrder(
            id,
            [.. records.Boxes.Here().Where(box => box.JobId == id).Select(box => box.Id)],
            [.. records.Parts.Where(part => part.GivenAt == null && part.Animal.Shares.Any(share => share.JobId == id)).Select(part => part.Id)],
            HandingOver.To, HandingOver.Owing), act)), id, "Handed over. Print the pickup summary below.", nameof(HandingOver));

    private Outcome Run(string verb, Func<Act, Outcome> work) => verbs.Run(verb, new Hand(SignedIn.StaffId, SignedIn.Station), FormKey, work);

    private IActionResult After(Outcome outcome, int id, string done, string prefix)
    {
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
        var extras = ExtrasTyped();
        if (PickupJob.Read(records, day, id, extras) is not { } job)
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

    public string Date(DateOnly date) => day.Date(date);

    public string Moment(DateTime utc) => day.Moment(utc);

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

    public sealed class HandOverInput
    {
        public string? To { get; set; }

        public bool Owing { get; set; }
    }
}
