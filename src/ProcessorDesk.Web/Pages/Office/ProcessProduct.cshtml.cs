using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Process;
using ProcessorDesk.Web.Forms;

namespace ProcessorDesk.Web.Pages.Office;

/// <summary>What one product's process records are held against: its cooking table and its loss in drying.</summary>
public sealed class ProcessProductModel(RecordsContext records, Verbs verbs) : StationPage
{
    [BindProperty]
    public InputModel Input { get; set; } = new();

    public Product Product { get; private set; } = null!;

    public IReadOnlyList<Difference> Differences { get; private set; } = [];

    public static IEnumerable<Choice> Tables => Choice.Of<LethalityKind>(Wording.Of);

    public IActionResult OnGet(int id)
    {
        if (!Load(id))
            return NotFound();
        (Input, Version) = (InputModel.Of(Product), Product.Version);
        return Page();
    }

    public IActionResult OnPost(int id)
    {
        if (!Load(id))
            return NotFound();
        Proportion? loss = Input.DryingLoss.Trim() == "" ? null : ModelState.Read(ProportionText.Parse(Input.DryingLoss), "Input.DryingLoss");
        if (loss >= Proportion.Whole)
            ModelState.AddModelError("Input.DryingLoss", "Type less than 100 %.");
        if (!ModelState.IsValid)
            return Page();
        var outcome = verbs.Run("set a product's table", Hand, FormKey, _ =>
        {
            var product = records.Products.Single(one => one.Id == id);
            return product.StaleSince(Version) ?? (product.HoldAgainst(Input.Table, Input.Support, loss) is { } refusal ? Outcome.Refused(refusal) : Outcome.Done());
        });
        if (outcome.IsDone)
        {
            Say($"{Product.Name}: saved. It holds for what is mixed from now on.");
            return RedirectToPage("Process");
        }

        ModelState.Add(outcome.Findings);
        if (outcome.IsStale && Load(id))
        {
            var theirs = InputModel.Of(Product);
            ModelState.SeenBoth(this, Product.Version);
            Differences = Difference.Of(
                ("Cooking table", Wording.Of(theirs.Table), Wording.Of(Input.Table)), ("Support in writing", theirs.Support, Input.Support), ("Loss in drying", theirs.DryingLoss, Input.DryingLoss));
        }

        return Page();
    }

    private bool Load(int id)
    {
        if (records.Products.AsNoTracking().SingleOrDefault(product => product.Id == id) is not { } product)
            return false;
        Product = product;
        return true;
    }

    public sealed class InputModel
    {
        public LethalityKind Table { get; set; } = LethalityKind.Meat65Log;

        public string Support { get; set; } = "";

        /// <summary>Percent of the green weight; empty where none is asked for.</summary>
        public string DryingLoss { get; set; } = "";

        public static InputModel Of(Product product) => new() { Table = product.Cooking, Support = product.CookingSupport ?? "", DryingLoss = product.DryingLoss?.Print() ?? "" };
    }
}
