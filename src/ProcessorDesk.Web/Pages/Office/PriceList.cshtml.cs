using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Office;

/// <summary>One price list: new, copied from another, changed until the first job is taken at it, and only read from then on.</summary>
public sealed class PriceListModel(RecordsContext records, Verbs verbs, ShopDay shop) : StationPage
{
    private IReadOnlyList<(int Id, string Name, bool IsRetired)> _products = [];

    [BindProperty]
    public PriceListInput Input { get; set; } = new();

    /// <summary>As it is kept; null for a new one.</summary>
    public PriceList? Known { get; private set; }

    public IReadOnlyList<Difference> Differences { get; private set; } = [];

    /// <summary>Shown to be read, not to be typed into.</summary>
    public bool IsOnlyRead { get; private set; }

    /// <summary>Where the form goes. What was typed into a list that was used meanwhile becomes a new list.</summary>
    public string Address => Known is { UsedAt: null } known ? FormattableString.Invariant($"/Office/PriceList/{known.Id}") : "/Office/PriceList";

    public bool IsNew => Known is not { UsedAt: null };

    public IReadOnlyList<Choice> Species => Choice.Of<Species>(Wording.Of);

    public IReadOnlyList<Choice> States => Choice.Of<ArrivalState>(Wording.Of);

    /// <param name="from">The list to begin a new one from.</param>
    public IActionResult OnGet(int? id, int? from)
    {
        if (!Load(id))
            return NotFound();
        if (Known is { } known)
        {
            (Input, Version, IsOnlyRead) = (PriceListInput.Of(known), known.Version, known.UsedAt is not null);
            return Page();
        }

        if (from is not { } copied)
            Input = new PriceListInput { StartsOn = shop.Today, Lines = [PriceInput.New(PriceFor.Animal), PriceInput.New(PriceFor.Product)] };
        else if (Kept(copied) is { } list)
            Input = CopyOf(list);
        else
            return NotFound();
        return Page();
    }

    public IActionResult OnPostAddLine(int? id, PriceFor kind) => Change(id, () =>
    {
        if (Enum.IsDefined(kind))
            Input.Lines.Add(PriceInput.New(kind));
    });

    public IActionResult OnPostRemoveLine(int? id, int line) => Change(id, () =>
    {
        if (line >= 0 && line < Input.Lines.Count)
            Input.Lines.RemoveAt(line);
    });

    public IActionResult OnPost(int? id)
    {
        if (!Load(id))
            return NotFound();
        if (Input.Read(ModelState, Names()) is null)
            return Page();
        var outcome = verbs.Run(id is null ? "make a price list" : "change a price list", Hand, FormKey, _ => Save(id));
        if (outcome.IsDone)
        {
            Say($"{Input.Name.Trim()} is saved. Its prices are asked from {shop.Date(Input.StartsOn!.Value)}.");
            return RedirectToPage("/Office/Prices");
        }

        Load(id);
        if (Known?.UsedAt is not null)
            ModelState.AddModelError("", $"Jobs were taken at {Known.Name}, so it stays as it is. What is typed here can be saved as a new list that starts later.");
        else
            Again(outcome);
        return Page();
    }

    private Outcome Save(int? id)
    {
        var prices = Input.Read(ModelState, Names())!;
        var startsOn = Input.StartsOn!.Value;
        var list = id is { } known ? records.PriceLists.Include(one => one.Prices).Single(one => one.Id == known) : null;
        if (list?.StaleSince(Version) is { } stale)
            return stale;
        if (records.PriceLists.Where(one => one.UsedAt != null && one.Id != id && one.StartsOn > startsOn).OrderByDescending(one => one.StartsOn)
            .Select(one => new { one.Name, one.StartsOn }).FirstOrDefault() is { } later)
            return Outcome.Refused(new Finding("StartsOn", $"Jobs were taken at {later.Name}, which starts {shop.Date(later.StartsOn)}. A list that starts before it is never asked: choose a later day."));
        if (list is null)
            records.PriceLists.Add(list = new PriceList(Input.Name, startsOn, prices));
        else if (list.Change(Input.Name, startsOn, prices) is { } refusal)
            return Outcome.Refused(refusal);
        records.SaveChanges();
        return Outcome.Done(list.Id);
    }

    private IActionResult Change(int? id, Action change)
    {
        if (!Load(id))
            return NotFound();
        change();
        ModelState.ShowChanged();
        return Page();
    }

    private void Again(Outcome outcome)
    {
        ModelState.Add(outcome.Findings);
        if (!outcome.IsStale || Known is not { } known)
            return;
        ModelState.SeenBoth(this, known.Version);
        var theirs = PriceListInput.Of(known);
        Differences = Difference.Of(
            ("Name", theirs.Name, Input.Name), ("Starts on", Day(theirs.StartsOn), Day(Input.StartsOn)), ("Prices", Words(theirs), Words(Input)));
    }

    private PriceListInput CopyOf(PriceList list)
    {
        var copy = PriceListInput.Of(list);
        copy.Name = "";
        copy.StartsOn = (list.StartsOn > shop.Today ? list.StartsOn : shop.Today).AddDays(1);
        return copy;
    }

    private string Words(PriceListInput list)
    {
        var names = Names();
        return string.Join("; ", list.Lines.Where(line => !line.IsEmpty).Select(line => line.Words(names)));
    }

    private bool Load(int? id)
    {
        Known = id is { } known ? Kept(known) : null;
        _products = [.. records.Products.AsNoTracking().OrderBy(product => product.Name)
            .Select(product => new ValueTuple<int, string, bool>(product.Id, product.Name, product.RetiredAt != null))];
        return id is null || Known is not null;
    }

    private PriceList? Kept(int id) => records.PriceLists.AsNoTracking().Include(list => list.Prices).SingleOrDefault(list => list.Id == id);

    private Dictionary<int, string> Names() => _products.ToDictionary(product => product.Id, product => product.Name);

    /// <summary>What is offered, and the one that stands in this row whether or not it still is.</summary>
    public IReadOnlyList<Choice> Products(PriceInput line) =>
    [
        .. _products.Where(product => !product.IsRetired || product.Id == line.ProductId)
            .Select(product => new Choice(product.Id.ToString(System.Globalization.CultureInfo.InvariantCulture), product.Name, product.IsRetired ? "retired" : ""))
    ];

    public static IReadOnlyList<Choice> Bases(PriceInput line) =>
        [.. PriceInput.BasesOf(line.For).Select(basis => new Choice(basis.ToString(), Wording.Of(basis)))];

    public static string For(Price price) => price.Species is { } species
        ? $"{Wording.Of(species)}{(price.ArrivalState is { } state ? $", {Wording.Of(state).ToLowerInvariant()}" : "")}"
        : Wording.Of(price.For);

    public string Day(DateOnly? day) => day is { } one ? shop.Date(one) : "";

    public string Date(DateTime utc) => shop.Date(utc);
}
