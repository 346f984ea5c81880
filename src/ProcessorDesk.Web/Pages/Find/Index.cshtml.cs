using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Door;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Find;

/// <summary>One box finds everything. One ticket or one job number leads straight there; anything else is listed by kind.</summary>
public sealed class IndexModel(RecordsContext records, ShopDay shop) : StationPage
{
    public Asked Asked { get; private set; } = Asked.Of("");

    /// <summary>What is said of a ticket code that leads nowhere, or no longer where it did; null where there is nothing to say.</summary>
    public string? TicketWords { get; private set; }

    public IReadOnlyList<Kind> Kinds { get; private set; } = [];

    public IReadOnlyList<Owner> Owners { get; private set; } = [];

    /// <summary>The batch that bears the number asked for; null where there is none.</summary>
    public FoundBatch? Batch { get; private set; }

    public bool NothingFound => Asked.Text != "" && Kinds.Count == 0 && Owners.Count == 0 && Batch is null;

    public bool MayTakeIn => SignedIn.MayOpen("Counter");

    public IActionResult OnGet(string? q)
    {
        Asked = Asked.Of(q);
        if (Asked.Text == "")
            return Page();
        if (Asked.Code is { } code && records.Tickets.AsNoTracking().SingleOrDefault(ticket => ticket.Number == code.Number) is { } ticket)
            return OfTicket(ticket);
        if (Asked.Batch is { } batch)
            return OfBatch(records.BatchNumbered(batch));

        var exact = records.ByNumberOrTag(Asked);
        var numbered = exact.Where(job => job.Number == Asked.Number).ToList();
        var tagged = exact.Where(job => job.HasTag(Asked.TagKey)).ToList();
        var lugs = exact.Where(job => Asked.Number is { } number && job.OpenLugs.Contains(number)).ToList();
        var isExactTag = tagged.Any(job => job.Tags.Any(tag => Texts.Key(tag) == Asked.TagKey) && job.Number != Asked.Number);
        if (numbered is [var only] && lugs.All(job => job.Id == only.Id) && !isExactTag)
            return RedirectToJob(only.Id);

        Batch = Asked.Number is { } asked ? records.BatchNumbered(asked) : null;
        var people = records.ByPeople(Asked);
        Owners = records.OwnersWithoutJobs(Asked);
        Kinds =
        [
            .. new Kind[]
            {
                new("Job number", numbered), new("Tag", tagged), new("Lug in use", lugs),
                new("Owner", [.. people.Where(job => job.People.Count == 0)]), new("Somebody around the job", [.. people.Where(job => job.People.Count > 0)]),
            }.Where(kind => kind.Jobs.Count > 0)
        ];
        if (Asked.Code is not null || Asked.CodeIsWrong || (Asked.MayBeCode && NothingFound))
            TicketWords = "No ticket has this code. Check the characters.";
        return Page();
    }

    public string Date(DateTime utc) => shop.Date(utc);

    /// <summary>The batch's own page, where it is open to this hand; otherwise whose meat is in it.</summary>
    public string Address(FoundBatch batch) => BatchPage(batch.Id) ?? FormattableString.Invariant($"/Find?q=batch+{batch.Number}");

    private string? BatchPage(int id) => Url.IfOpen(SignedIn.Role, "/Kitchen/Batch", "id", id);

    private IActionResult OfBatch(FoundBatch? batch)
    {
        if (batch is not null && BatchPage(batch.Id) is { } page)
            return LocalRedirect(page);
        if (batch is not null)
            Kinds = [new(batch.Name, records.JobsOf(batch))];
        return Page();
    }

    private IActionResult OfTicket(Ticket ticket)
    {
        if (ticket is { Kind: TicketKind.Batch, VoidedAt: null } && BatchPage(ticket.TargetId) is { } page)
            return LocalRedirect(page);
        var jobs = records.JobsOf(ticket);
        if (ticket is { Kind: TicketKind.Box, VoidedAt: null } && jobs is [var boxed])
            return LocalRedirect(PlaceOfBox(boxed.Id, ticket.TargetId));
        if (ticket.VoidedAt is null && ticket.Kind != TicketKind.Batch && jobs is [var only])
            return RedirectToJob(only.Id, ticket.Kind == TicketKind.Carcass ? $"animal-{ticket.TargetId}" : null);
        if (jobs.Count > 0)
            Kinds = [new($"{Wording.Of(ticket.Kind)} {ticket.Code.Print()}", jobs)];
        TicketWords = ticket switch
        {
            { VoidedAt: { } at, ReplacedByNumber: { } by } =>
                $"Ticket {ticket.Code.Print()} was replaced on {shop.Date(at)} by {Trade.Tickets.TicketCode.FromNumber(by).Print()}. Throw the old one away.",
            { VoidedAt: { } at } => $"Ticket {ticket.Code.Print()} was made void on {shop.Date(at)}. Throw it away.",
            { Kind: TicketKind.Batch } => "The meat of these owners is in this batch.",
            _ when jobs.Count > 1 => "This animal is shared: choose whose part it is.",
            _ => "Nothing stands behind this ticket any more.",
        };
        return Page();
    }

    /// <summary>At the freezer a box is looked for to be moved or unpacked, elsewhere to be handed over.</summary>
    private string PlaceOfBox(int jobId, int boxId) => SignedIn.Station != "Freezer" && SignedIn.MayOpen("Pickup")
        ? string.Create(CultureInfo.InvariantCulture, $"/Pickup/Job/{jobId}")
        : string.Create(CultureInfo.InvariantCulture, $"/Freezer/Job/{jobId}#box-{boxId}");

    private LocalRedirectResult RedirectToJob(int id, string? part = null) =>
        LocalRedirect(string.Create(CultureInfo.InvariantCulture, $"/Find/Job/{id}{(part is null ? "" : "#" + part)}"));

    /// <summary>Jobs found by one kind of thing.</summary>
    public sealed record Kind(string By, IReadOnlyList<FoundJob> Jobs)
    {
        public bool IsCutShort => Jobs.Count == Searching.Most;
    }
}
