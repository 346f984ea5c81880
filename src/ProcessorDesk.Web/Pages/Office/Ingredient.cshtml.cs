using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Blending;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Office;

/// <summary>One ingredient as its label states it. Formulas made before keep what they were made with.</summary>
public sealed class IngredientModel(RecordsContext records, Verbs verbs, ShopDay shop) : StationPage
{
    [BindProperty]
    public IngredientInput Input { get; set; } = new();

    /// <summary>As it is kept; null for a new one.</summary>
    public Ingredient? Known { get; private set; }

    public IReadOnlyList<Difference> Differences { get; private set; } = [];

    public IReadOnlyList<Choice> Kinds => Choice.Of<IngredientKind>(Wording.Of);

    public IReadOnlyList<Choice> Units => [.. Enum.GetValues<WeightUnit>().Select(unit => new Choice(unit.ToString(), UnitFactors.Symbol(unit)))];

    public IReadOnlyList<Choice> Allergens => AllergenWords.Choices(Input.Contains, shop.Settings);

    public IReadOnlyList<Choice> Fats => [.. FatContents.All.Select(content => new Choice(content.Id, $"{content.Name}, {content.Fat.Print()}", content.Source))];

    public IActionResult OnGet(int? id)
    {
        if (!Load(id))
            return NotFound();
        if (Known is { } known)
            (Input, Version) = (IngredientInput.Of(known), known.Version);
        return Page();
    }

    public IActionResult OnPost(int? id)
    {
        if (!Load(id))
            return NotFound();
        if (Input.Read(ModelState) is not { } facts)
            return Page();
        var outcome = verbs.Run(id is null ? "add an ingredient" : "change an ingredient", Hand, FormKey, _ => Save(id, facts));
        if (!outcome.IsDone)
            return Again(outcome);
        Say(id is null ? $"{facts.Name.Trim()} is added." : $"{facts.Name.Trim()} is saved. Formulas made before keep what they were made with.");
        return RedirectToPage("/Office/Ingredients");
    }

    public IActionResult OnPostRetire(int id) => Turn(id, "retire an ingredient", (one, act) => one.Retire(act.Now), "is not offered any more");

    public IActionResult OnPostBringBack(int id) => Turn(id, "bring an ingredient back", (one, _) => one.BringBack(), "is offered again");

    private Outcome Save(int? id, IngredientFacts facts)
    {
        var ingredient = id is { } known ? records.Ingredients.Single(one => one.Id == known) : null;
        if (ingredient?.StaleSince(Version) is { } stale)
            return stale;
        var name = facts.Name.Trim();
        if (records.Ingredients.Any(one => one.Name == name && one.Id != id))
            return Outcome.Refused(new Finding("Name", "There is an ingredient of this name. Choose another, or change that one."));
        if (ingredient is not null && ingredient.GoesByPiece != (facts.Kind == IngredientKind.Casing) && records.IngredientLots.Any(lot => lot.IngredientId == id))
            return Outcome.Refused(new Finding("Kind", "Its lots are counted the way it was. Retire it, and add the other as its own."));
        if (ingredient is null)
            records.Ingredients.Add(ingredient = new Ingredient(facts));
        else
            ingredient.Describe(facts);
        records.SaveChanges();
        return Outcome.Done(ingredient.Id);
    }

    private IActionResult Turn(int id, string verb, Action<Ingredient, Act> turn, string said)
    {
        if (!Load(id))
            return NotFound();
        verbs.Run(verb, Hand, FormKey, act =>
        {
            turn(records.Ingredients.Single(one => one.Id == id), act);
            return Outcome.Done(id);
        });
        Say($"{Known!.Name} {said}.");
        return RedirectToPage("/Office/Ingredients");
    }

    private PageResult Again(Outcome outcome)
    {
        ModelState.Add(outcome.Findings);
        if (outcome.IsStale && Load(Known?.Id) && Known is { } known)
        {
            ModelState.SeenBoth(this, known.Version);
            var theirs = IngredientInput.Of(known);
            Differences = Difference.Of(
                ("Name", theirs.Name, Input.Name), ("Nitrite", theirs.Nitrite, Input.Nitrite), ("Nitrate", theirs.Nitrate, Input.Nitrate),
                ("Pork", theirs.IsPork ? "yes" : "no", Input.IsPork ? "yes" : "no"), ("Counts as meat", theirs.InMeatBlock ? "yes" : "no", Input.InMeatBlock ? "yes" : "no"),
                ("Fat", theirs.Fat, Input.Fat), ("Salt", theirs.Salt, Input.Salt), ("Water", theirs.Water, Input.Water),
                ("Allergens", Words(theirs), Words(Input)), ("Cost", theirs.Cost, Input.Cost), ("Least on hand", theirs.Least, Input.Least));
        }

        return Page();
    }

    private static string Words(IngredientInput input) => string.Join(", ", input.Contains.Order().Select(Wording.Of));

    private bool Load(int? id)
    {
        Known = id is { } known ? records.Ingredients.AsNoTracking().SingleOrDefault(one => one.Id == known) : null;
        return id is null || Known is not null;
    }
}
