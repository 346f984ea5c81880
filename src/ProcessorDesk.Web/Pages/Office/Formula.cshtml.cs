using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Blending;
using ProcessorDesk.Trade.Formulas;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Office;

/// <summary>The next version of a product's formula, begun from the last. What was planned or made keeps its own.</summary>
public sealed class FormulaModel(RecordsContext records, Verbs verbs, ShopDay shop) : StationPage
{
    [BindProperty]
    public FormulaInput Input { get; set; } = new();

    public Product Product { get; private set; } = null!;

    /// <summary>What is typed comes to; null where something of it can't be read yet.</summary>
    public FormulaOutlook? Outlook { get; private set; }

    public IReadOnlyList<Difference> Differences { get; private set; } = [];

    private FormulaVersion? Latest => Product.Formulas.MaxBy(formula => formula.Number);

    public int NextNumber => (Latest?.Number ?? 0) + 1;

    /// <summary>All there is, the retired ones among it: an older version may name them.</summary>
    private List<Ingredient> Larder { get; set; } = [];

    public ShopSettings Settings => shop.Settings;

    public IReadOnlyList<Choice> Fats => Choices(one => one.Kind == IngredientKind.Meat);

    public IReadOnlyList<Choice> Casings => Choices(one => one.GoesByPiece);

    public IReadOnlyList<Choice> Offered => Choices(one => !one.GoesByPiece);

    /// <summary>"Deer 2.42, Elk 1.45 …": the published figures for game, to type from.</summary>
    public string LeanFats { get; } = $"Empty where not known. Published: {string.Join(", ", s_game.Select(one => $"{one.Name.ToLowerInvariant()} {one.Fat.Print()}"))} ({s_game[0].Source}).";

    private static readonly FatContent[] s_game = [.. new[] { "deer", "elk", "pronghorn", "moose", "goat" }.Select(FatContents.Find)];

    public IReadOnlyList<Choice> Bases => Choice.Of<FormulaBasis>(Wording.Of);

    /// <summary>What an older version called its line, where the larder has nothing of that name; null otherwise.</summary>
    public string? NotFound(int line) =>
        Input.Lines[line].Ingredient == "" && Latest?.Ingredients.OrderBy(one => one.Position).ElementAtOrDefault(line)?.Name is { } name ? $"{name}, not among the ingredients yet" : null;

    public IActionResult OnGet(int id)
    {
        if (!Load(id))
            return NotFound();
        Version = Product.Version;
        if (Latest is { } latest)
            Input = FormulaInput.Of(latest, shop.Settings.BenchDivision, Larder);
        if (Input.Lines.Count == 0)
            Input.Lines.Add(new FormulaLineInput());
        Reckon();
        return Page();
    }

    /// <summary>What is typed is reckoned for the page's panel; nothing is saved.</summary>
    public IActionResult OnPostReckon(int id)
    {
        if (!Load(id))
            return NotFound();
        if (!IsLive)
            return Again();
        Reckon();
        return Partial("_FormulaOutlook", (Outlook, Settings));
    }

    public IActionResult OnPostAddLine(int id) => Change(id, () => Input.Lines.Add(new FormulaLineInput()));

    public IActionResult OnPostRemoveLine(int id, int line) => Change(id, () =>
    {
        if (line >= 0 && line < Input.Lines.Count)
            Input.Lines.RemoveAt(line);
    });

    public IActionResult OnPost(int id)
    {
        if (!Load(id))
            return NotFound();
        if (Input.Read(ModelState, shop.Now, Larder) is not { } version)
            return Again();
        Outlook = FormulaOutlook.Of(Product, version);
        if (Outlook.Findings.Count > 0)
        {
            Note(Outlook.Findings);
            return Page();
        }

        var outcome = verbs.Run("make a formula", Hand, FormKey, act =>
        {
            var product = records.Products.Include(one => one.Formulas).Single(one => one.Id == id);
            if (product.StaleSince(Version) is { } stale)
                return stale;
            // Read anew, so that the version bears the moment of this act and what its ingredients are now.
            return product.Reformulate(Input.Read(ModelState, act.Now, records.Ingredients.ToList())!) is { } refusal ? Outcome.Refused(refusal with { Field = "" }) : Outcome.Done(id);
        });
        if (outcome.IsDone)
        {
            Say($"Version {NextNumber} of {Product.Name} is what new orders are made by.");
            return RedirectToPage("/Office/Product", new { id });
        }

        ModelState.Add(outcome.Findings);
        if (outcome.IsStale)
            ShowBoth(id);
        return Page();
    }

    private IActionResult Change(int id, Action change)
    {
        if (!Load(id))
            return NotFound();
        change();
        ModelState.ShowChanged();
        Reckon();
        return Page();
    }

    private PageResult Again()
    {
        Reckon();
        return Page();
    }

    /// <summary>Reckons without a word about what is not typed yet.</summary>
    private void Reckon()
    {
        var apart = new Microsoft.AspNetCore.Mvc.ModelBinding.ModelStateDictionary();
        Outlook = Input.Read(apart, shop.Now, Larder) is { } version ? FormulaOutlook.Of(Product, version) : null;
    }

    /// <summary>Findings count the lines that are filled in; the page counts all.</summary>
    private void Note(IReadOnlyList<Finding> findings)
    {
        int[] filled = [.. Input.Lines.Index().Where(line => !line.Item.IsEmpty).Select(line => line.Index)];
        foreach (var finding in findings)
        {
            var field = finding.Field switch
            {
                "LeanShare" => "Input.LeanShare",
                _ when finding.Field.StartsWith("Lines[", StringComparison.Ordinal) =>
                    FormattableString.Invariant($"Input.Lines[{filled[int.Parse(finding.Field[6..finding.Field.IndexOf(']', StringComparison.Ordinal)], System.Globalization.CultureInfo.InvariantCulture)]}].Ingredient"),
                _ => "",
            };
            ModelState.AddModelError(field, finding.Source == "" ? finding.Text : $"{finding.Text} Source: {finding.Source}.");
        }
    }

    private void ShowBoth(int id)
    {
        Load(id);
        ModelState.SeenBoth(this, Product.Version);
        var theirs = Latest is { } latest ? FormulaInput.Of(latest, shop.Settings.BenchDivision, Larder) : new FormulaInput();
        Differences = Difference.Of(
            ("Lean", theirs.LeanShare, Input.LeanShare), ("Added fat", NameOf(theirs.AddedFat), NameOf(Input.AddedFat)),
            ("Casing", $"{NameOf(theirs.Casing)} {theirs.CasingHolds}", $"{NameOf(Input.Casing)} {Input.CasingHolds}"),
            ("Loss", $"{theirs.LossLow}, {theirs.LossTypical}, {theirs.LossHigh}", $"{Input.LossLow}, {Input.LossTypical}, {Input.LossHigh}"),
            ("Smallest run", theirs.SmallestRun, Input.SmallestRun), ("Step", theirs.Step, Input.Step), ("Rest", theirs.RestHours, Input.RestHours), ("Ingredients", Words(theirs), Words(Input)));
    }

    private string Words(FormulaInput formula) => string.Join("; ", formula.Lines.Where(line => !line.IsEmpty)
        .Select(line => $"{NameOf(line.Ingredient)} {line.Amount} {Wording.Of(line.Basis)}"));

    private string NameOf(string id) => Larder.FirstOrDefault(one => $"{one.Id}" == id)?.Name ?? "";

    private List<Choice> Choices(Func<Ingredient, bool> which) =>
        [.. Larder.Where(which).Where(one => one.RetiredAt is null || IsNamed(one)).Select(one => new Choice($"{one.Id}", one.Name, LarderWords.Strength(one.Nitrite, one.Nitrate)))];

    private bool IsNamed(Ingredient one) => Input.AddedFat == $"{one.Id}" || Input.Casing == $"{one.Id}" || Input.Lines.Any(line => line.Ingredient == $"{one.Id}");

    private bool Load(int id)
    {
        Product = records.Products.AsNoTracking().Include(product => product.Formulas).ThenInclude(formula => formula.Ingredients).AsSplitQuery()
            .SingleOrDefault(product => product.Id == id)!;
        Larder = [.. records.Ingredients.AsNoTracking().OrderBy(one => one.Name)];
        return Product is not null;
    }
}
