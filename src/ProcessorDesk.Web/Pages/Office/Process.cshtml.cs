using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Process;
using ProcessorDesk.Web.Forms;

namespace ProcessorDesk.Web.Pages.Office;

/// <summary>What process records are held against: the shop's own figures, never looser than those published, and each product's table and drying loss.</summary>
public sealed class ProcessModel(RecordsContext records, Verbs verbs) : StationPage
{
    [BindProperty]
    public ProcessInput Input { get; set; } = new();

    public IReadOnlyList<Product> Products { get; private set; } = [];

    public static IEnumerable<Choice> Coolings =>
    [
        new("", "The published one that a record comes closest to"),
        .. CoolingOptions.All.Where(option => !option.OffUntilConfirmed).Select(option => new Choice(option.Id, option.Name, string.Join(", then ", option.Steps.Select(step => step.Print())))),
    ];

    public static IEnumerable<Choice> Tables => Choice.Of<LethalityKind>(Wording.Of);

    public IEnumerable<Choice> ToHold => Products.Select(product => new Choice($"{product.Id}", product.Name));

    public void OnGet()
    {
        var shop = records.Shop.AsNoTracking().Single();
        (Input.Cooling, Input.Accuracy) = (shop.CoolingOption ?? "", shop.ThermometerAccuracy.Fahrenheit.ToString("0.##", CultureInfo.InvariantCulture));
        Input.CookingGap = shop.CookingGapMinutes.ToString(CultureInfo.InvariantCulture);
        Input.ChillingGap = shop.ChillingGapMinutes.ToString(CultureInfo.InvariantCulture);
        Load();
    }

    public IActionResult OnPost()
    {
        var cooking = ModelState.Read(CountText.Parse(Input.CookingGap), "Input.CookingGap");
        var chilling = ModelState.Read(CountText.Parse(Input.ChillingGap), "Input.ChillingGap");
        var accuracy = Degrees();
        var cooling = CoolingOptions.All.FirstOrDefault(option => option.Id == Input.Cooling);
        return Done(() => verbs.Run("set what records are held against", Hand, FormKey, _ =>
            records.Shop.Single().SetProcess(cooling, cooking, chilling, accuracy) is { Count: > 0 } findings ? Outcome.Refused(findings) : Outcome.Done()), "The shop's figures are saved. They hold for what is mixed from now on.");
    }

    public IActionResult OnPostProduct()
    {
        Proportion? loss = Input.DryingLoss.Trim() == "" ? null : ModelState.Read(ProportionText.Parse(Input.DryingLoss), "Input.DryingLoss");
        if (loss >= Proportion.Whole)
            ModelState.AddModelError("Input.DryingLoss", "Type less than 100 %.");
        if (Input.ProductId is not { } id || !records.Products.Any(product => product.Id == id))
            ModelState.AddModelError("Input.ProductId", "Choose the product.");
        return Done(() => verbs.Run("set a product's table", Hand, FormKey, _ =>
            records.Products.Single(product => product.Id == Input.ProductId).HoldAgainst(Input.Table, Input.Support, loss) is { } refusal ? Outcome.Refused(refusal) : Outcome.Done()), "The product's table is saved. It holds for what is mixed from now on.");
    }

    private Temperature Degrees()
    {
        if (decimal.TryParse(Input.Accuracy.Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var degrees) && degrees <= 20m)
            return Temperature.FromFahrenheit(degrees);
        ModelState.AddModelError("Input.Accuracy", "Type degrees Fahrenheit, for example 0.5; 0 where nothing is added.");
        return default;
    }

    private IActionResult Done(Func<Outcome> run, string said)
    {
        if (ModelState.IsValid)
        {
            var outcome = run();
            if (outcome.IsDone)
            {
                Say(said);
                return RedirectToPage();
            }

            ModelState.Add(outcome.Findings);
        }

        Load();
        return Page();
    }

    private void Load() => Products = [.. records.Products.AsNoTracking().Where(product => product.RetiredAt == null).OrderBy(product => product.Name)];
}
