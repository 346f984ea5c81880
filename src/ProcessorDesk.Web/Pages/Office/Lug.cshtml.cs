using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Office;

/// <summary>One lug: its tare checked anew, retired, brought back. A filling keeps the tare it was begun with.</summary>
public sealed class LugModel(RecordsContext records, Verbs verbs, ShopDay shop) : StationPage
{
    [BindProperty]
    public TareInput Input { get; set; } = new();

    public Lug Lug { get; private set; } = null!;

    public IReadOnlyList<Difference> Differences { get; private set; } = [];

    public IActionResult OnGet(int id)
    {
        if (!Load(id))
            return NotFound();
        Version = Lug.Version;
        return Page();
    }

    public IActionResult OnPost(int id)
    {
        if (!Load(id))
            return NotFound();
        var tare = ModelState.Read(WeightText.Parse(Input.Tare, shop.Settings.BenchDivision.Unit), "Input.Tare");
        return ModelState.IsValid
            ? After(Run("check a tare", id, (lug, act) => lug.CheckTare(tare, act.Now), heed: true), $"Lug {Lug.Number} has a tare of {shop.Print(tare)} from now on.")
            : Page();
    }

    public IActionResult OnPostRetire(int id) => Load(id)
        ? After(
            records.Fillings.Open().Any(filling => filling.LugId == id)
                ? Outcome.Refused(new Finding("", "There is meat in this lug. Empty it first."))
                : Run("retire a lug", id, (lug, act) => lug.Retire(act.Now), heed: false),
            $"Lug {Lug.Number} is retired.")
        : NotFound();

    public IActionResult OnPostBringBack(int id) => Load(id)
        ? After(Run("bring a lug back", id, (lug, _) => lug.BringBack(), heed: false), $"Lug {Lug.Number} is in use again. Check its tare.")
        : NotFound();

    private Outcome Run(string verb, int id, Action<Lug, Act> work, bool heed) => verbs.Run(verb, Hand, FormKey, act =>
    {
        var lug = records.Lugs.Single(one => one.Id == id);
        if (heed && lug.StaleSince(Version) is { } stale)
            return stale;
        work(lug, act);
        return Outcome.Done(id);
    });

    private IActionResult After(Outcome outcome, string said)
    {
        if (outcome.IsDone)
        {
            Say(said);
            return RedirectToPage("/Office/Lugs");
        }

        ModelState.Add(outcome.Findings);
        return outcome.IsStale ? Both() : Page();
    }

    private PageResult Both()
    {
        Load(Lug.Id);
        ModelState.SeenBoth(this, Lug.Version);
        Differences = Difference.Of(("Tare", shop.Print(Lug.Tare), Input.Tare));
        return Page();
    }

    private bool Load(int id)
    {
        Lug = records.Lugs.AsNoTracking().SingleOrDefault(lug => lug.Id == id)!;
        return Lug is not null;
    }

    public string Print(Weight weight) => shop.Print(weight);

    public string Date(DateTime utc) => shop.Date(utc);

    public sealed class TareInput
    {
        public string Tare { get; set; } = "";
    }
}
