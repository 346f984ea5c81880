using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Door;
using ProcessorDesk.Web.Forms;

namespace ProcessorDesk.Web.Pages.Office;

/// <summary>One hand, new or known: name, role, PIN; retired and brought back.</summary>
public sealed class StaffEditModel(RecordsContext records, Verbs verbs, PinTries tries) : StationPage
{
    [BindProperty]
    public StaffInput Input { get; set; } = new();

    /// <summary>As it is kept; null for a new one.</summary>
    public Staff? Known { get; private set; }

    public IReadOnlyList<Difference> Differences { get; private set; } = [];

    public IReadOnlyList<Choice> Roles => Choice.Of<StaffRole>(StaffWords.Role);

    public IActionResult OnGet(int? id)
    {
        if (!Load(id))
            return NotFound();
        if (Known is { } known)
            (Input, Version) = (StaffInput.Of(known), known.Version);
        return Page();
    }

    public IActionResult OnPost(int? id)
    {
        if (!Load(id))
            return NotFound();
        if (!Input.Check(ModelState, isNew: id is null))
            return Page();
        var outcome = verbs.Run(id is null ? "add a hand" : "change a hand", Hand, FormKey, _ => Save(id));
        if (!outcome.IsDone)
            return Again(outcome);
        if (id is { } known && Input.Pin != "")
            tries.Right(FormattableString.Invariant($"staff {known}"));
        Say($"{Input.Name.Trim()} is saved.");
        return RedirectToPage("/Office/Staff");
    }

    public IActionResult OnPostRetire(int id) => Turn(id, "retire a hand", "is retired and can't sign in any more", staff =>
    {
        if (IsLast(staff))
            return Outcome.Refused(new Finding("", "This is the last manager. Make somebody else a manager first."));
        return staff.RetiredAt is null ? null : Outcome.Refused(new Finding("", "This hand is retired already."));
    }, (staff, act) => staff.Retire(act.Now));

    public IActionResult OnPostBringBack(int id) => Turn(id, "bring a hand back", "is back and can sign in", _ => null, (staff, _) => staff.BringBack());

    private Outcome Save(int? id)
    {
        var staff = id is { } known ? records.Staff.Single(one => one.Id == known) : null;
        if (staff?.StaleSince(Version) is { } stale)
            return stale;
        var initials = Input.Initials.Trim().ToUpperInvariant();
        if (records.Staff.Any(one => one.Initials == initials && one.Id != id))
            return Outcome.Refused(new Finding("Initials", "Another hand has these initials. Choose others, so that the two can be told apart."));
        if (staff is not null && Input.Role != StaffRole.Manager && IsLast(staff))
            return Outcome.Refused(new Finding("Role", "This is the last manager. Make somebody else a manager first."));
        if (staff is null)
            records.Staff.Add(staff = new Staff(Input.Name, Input.Initials, Input.Role!.Value));
        Input.WriteOn(staff);
        records.SaveChanges();
        return Outcome.Done(staff.Id);
    }

    private IActionResult Turn(int id, string verb, string said, Func<Staff, Outcome?> refusal, Action<Staff, Act> turn)
    {
        if (!Load(id))
            return NotFound();
        ModelState.Clear();
        var outcome = verbs.Run(verb, Hand, FormKey, act =>
        {
            var staff = records.Staff.Single(one => one.Id == id);
            if (refusal(staff) is { } refused)
                return refused;
            turn(staff, act);
            return Outcome.Done(id);
        });
        if (outcome.IsDone)
        {
            Say($"{Known!.Name} {said}.");
            return RedirectToPage("/Office/Staff");
        }

        (Input, Version) = (StaffInput.Of(Known!), Known!.Version);
        return Again(outcome);
    }

    private PageResult Again(Outcome outcome)
    {
        ModelState.Add(outcome.Findings);
        if (outcome.IsStale && Load(Known?.Id) && Known is { } known)
        {
            ModelState.SeenBoth(this, known.Version);
            Differences = Difference.Of(
                ("Name", known.Name, Input.Name), ("Initials", known.Initials, Input.Initials.ToUpperInvariant()),
                ("Does", StaffWords.Role(known.Role), Input.Role is { } role ? StaffWords.Role(role) : ""));
        }

        return Page();
    }

    private bool IsLast(Staff staff) => staff.Role == StaffRole.Manager && staff.RetiredAt is null
        && !records.Staff.Any(one => one.Role == StaffRole.Manager && one.RetiredAt == null && one.PinHash != null && one.Id != staff.Id);

    private bool Load(int? id)
    {
        Known = id is { } known ? records.Staff.AsNoTracking().SingleOrDefault(staff => staff.Id == known) : null;
        return id is null || Known is not null;
    }
}
