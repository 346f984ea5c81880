using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Formulas;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Office;

/// <summary>One product: its name and how it is made, and every version of its formula.</summary>
public sealed class ProductModel(RecordsContext records, Verbs verbs, ShopDay shop) : StationPage
{
    [BindProperty]
    public ProductInput Input { get; set; } = new();

    /// <summary>As it is kept; null for a new one.</summary>
    public Product? Known { get; private set; }

    public IReadOnlyList<Difference> Differences { get; private set; } = [];

    public IEnumerable<(FormulaVersion Version, FormulaOutlook Outlook)> Versions => Known is null
        ? []
        : Known.Formulas.OrderByDescending(formula => formula.Number).Select(formula => (formula, FormulaOutlook.Of(Known, formula)));

    public IReadOnlyList<Choice> Kinds => Choice.Of<ProcessKind>(Wording.Of);

    public IReadOnlyList<Choice> Classes => Choice.Of<ProductClass>(Wording.Of);

    public IActionResult OnGet(int? id)
    {
        if (!Load(id))
            return NotFound();
        if (Known is { } known)
            (Input, Version) = (ProductInput.Of(known), known.Version);
        return Page();
    }

    public IActionResult OnPost(int? id)
    {
        if (!Load(id))
            return NotFound();
        if (!Input.Check(ModelState))
            return Page();
        var outcome = verbs.Run(id is null ? "add a product" : "change a product", Hand, FormKey, _ => Save(id));
        if (!outcome.IsDone)
            return Again(outcome);
        Say(id is null ? $"{Input.Name.Trim()} is added. Write its formula, and it is offered." : $"{Input.Name.Trim()} is saved.");
        return id is null ? RedirectToPage("/Office/Formula", new { id = outcome.Result }) : RedirectToPage(new { id });
    }

    public IActionResult OnPostRetire(int id) => Turn(id, "retire a product", (product, act) => product.Retire(act.Now), "is not offered any more");

    public IActionResult OnPostBringBack(int id) => Turn(id, "bring a product back", (product, _) =>
    {
        product.BringBack();
        return null;
    }, "is offered again");

    private Outcome Save(int? id)
    {
        var product = id is { } known ? records.Products.Include(one => one.Formulas).ThenInclude(one => one.Ingredients).Single(one => one.Id == known) : null;
        if (product?.StaleSince(Version) is { } stale)
            return stale;
        var name = Input.Name.Trim();
        if (records.Products.Any(one => one.Name == name && one.Id != id))
            return Outcome.Refused(new Finding("Name", "There is a product of this name. Choose another, or change that one."));
        if (product?.Formulas.MaxBy(formula => formula.Number) is { } latest && latest.HasCure != Input.Cured)
            return Outcome.Refused(new Finding("Cured", latest.HasCure
                ? "The formula has cure in it. Make a version without it first."
                : "The formula has no cure in it, so it could not be offered. Retire this product and add the cured one as its own."));
        if (product is null)
            records.Products.Add(product = new Product(name, Input.ProcessKind!.Value, Input.Cured));
        product.Describe(name, Input.ProcessKind!.Value, Input.Cured);
        product.GuideBy(Input.Class);
        records.SaveChanges();
        return Outcome.Done(product.Id);
    }

    private IActionResult Turn(int id, string verb, Func<Product, Act, Finding?> turn, string said)
    {
        if (!Load(id))
            return NotFound();
        ModelState.Clear();
        var outcome = verbs.Run(verb, Hand, FormKey, act =>
            turn(records.Products.Single(one => one.Id == id), act) is { } refusal ? Outcome.Refused(refusal) : Outcome.Done(id));
        if (outcome.IsDone)
        {
            Say($"{Known!.Name} {said}.");
            return RedirectToPage("/Office/Products");
        }

        (Input, Version) = (ProductInput.Of(Known!), Known!.Version);
        return Again(outcome);
    }

    private PageResult Again(Outcome outcome)
    {
        ModelState.Add(outcome.Findings);
        if (outcome.IsStale && Load(Known?.Id) && Known is { } known)
        {
            ModelState.SeenBoth(this, known.Version);
            Differences = Difference.Of(
                ("Name", known.Name, Input.Name), ("Made", Wording.Of(known.ProcessKind), Input.ProcessKind is { } kind ? Wording.Of(kind) : ""),
                ("Beside the rules for", known.Class is { } rules ? Wording.Of(rules) : "", Input.Class is { } typed ? Wording.Of(typed) : ""),
                ("Cure", known.Cured ? "With cure" : "Without", Input.Cured ? "With cure" : "Without"));
        }

        return Page();
    }

    private bool Load(int? id)
    {
        Known = id is { } known
            ? records.Products.AsNoTracking().Include(product => product.Formulas).ThenInclude(formula => formula.Ingredients).AsSplitQuery().SingleOrDefault(product => product.Id == known)
            : null;
        return id is null || Known is not null;
    }

    /// <summary>As they are kept with the line, or in the words of a version older than the larder.</summary>
    public string AllergensOf(FormulaIngredient line) => line.AllergenWords ?? AllergenWords.Say(line.Contains, shop.Settings);

    public string Moment(DateTime utc) => shop.Moment(utc);

    public string Print(Weight weight) => shop.Print(weight);
}
