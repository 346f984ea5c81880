using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
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

    public IReadOnlyList<Choice> Bases => Choice.Of<FormulaBasis>(Wording.Of);

    public IActionResult OnGet(int id)
    {
        if (!Load(id))
            return NotFound();
        Version = Product.Version;
        if (Latest is { } latest)
            Input = FormulaInput.Of(latest, shop.Settings.BenchDivision);
        if (Input.Lines.Count == 0)
            Input.Lines.Add(new IngredientInput());
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
        return Partial("_FormulaOutlook", Outlook);
    }

    public IActionResult OnPostAddLine(int id) => Change(id, () => Input.Lines.Add(new IngredientInput()));

    public IActionResult OnPostRemoveLine(int id, int line) => Change(id, () =>
    {
        if (line >= 0 && line < Input.Lines.Count)
            Input.Lines.RemoveAt(line);
    });

    public IActionResult OnPost(int id)
    {
        if (!Load(id))
            return NotFound();
        if (Input.Read(ModelState, shop.Now) is not { } version)
            return Again();
        Outlook = FormulaOutlook.Of(Product.Name, Product.Cured, version);
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
            // Read anew, so that the version bears the moment of this act.
            return product.Reformulate(Input.Read(ModelState, act.Now)!) is { } refusal ? Outcome.Refused(refusal with { Field = "" }) : Outcome.Done(id);
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
        Outlook = Input.Read(apart, shop.Now) is { } version ? FormulaOutlook.Of(Product.Name, Product.Cured, version) : null;
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
                    FormattableString.Invariant($"Input.Lines[{filled[int.Parse(finding.Field[6..finding.Field.IndexOf(']', StringComparison.Ordinal)], System.Globalization.CultureInfo.InvariantCulture)]}]{finding.Field[(finding.Field.IndexOf(']', StringComparison.Ordinal) + 1)..]}"),
                _ => "",
            };
            ModelState.AddModelError(field, finding.Source == "" ? finding.Text : $"{finding.Text} Source: {finding.Source}.");
        }
    }

    private void ShowBoth(int id)
    {
        Load(id);
        ModelState.SeenBoth(this, Product.Version);
        var theirs = Latest is { } latest ? FormulaInput.Of(latest, shop.Settings.BenchDivision) : new FormulaInput();
        Differences = Difference.Of(
            ("Lean", theirs.LeanShare, Input.LeanShare), ("Added fat", theirs.AddedFat, Input.AddedFat),
            ("Loss", $"{theirs.LossLow}, {theirs.LossTypical}, {theirs.LossHigh}", $"{Input.LossLow}, {Input.LossTypical}, {Input.LossHigh}"),
            ("Smallest run", theirs.SmallestRun, Input.SmallestRun), ("Step", theirs.Step, Input.Step), ("Rest", theirs.RestHours, Input.RestHours), ("Ingredients", Words(theirs), Words(Input)));
    }

    private static string Words(FormulaInput formula) => string.Join("; ", formula.Lines.Where(line => !line.IsEmpty)
        .Select(line => $"{line.Name} {line.Amount} {Wording.Of(line.Basis)} ({line.Nitrite} % nitrite, {line.Nitrate} % nitrate)"));

    private bool Load(int id)
    {
        Product = records.Products.AsNoTracking().Include(product => product.Formulas).ThenInclude(formula => formula.Ingredients).AsSplitQuery()
            .SingleOrDefault(product => product.Id == id)!;
        return Product is not null;
    }
}
