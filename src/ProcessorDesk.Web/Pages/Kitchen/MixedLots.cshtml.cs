using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>The lots of a load that is mixed: what was noted, struck out where it is wrong, noted late where it is missing.</summary>
public sealed class MixedLotsModel(RecordsContext records, Verbs verbs, ShopDay shop) : StationPage
{
    private const int MostOffered = 100;

    [BindProperty]
    public LotInput Input { get; set; } = new();

    public Load Mixed { get; private set; } = null!;

    public IReadOnlyList<LotUse> Uses => [.. Mixed.LotUses.OrderBy(use => use.Id)];

    public ShopDay Shop => shop;

    public IReadOnlyList<Choice> Offered =>
        [.. _lots.Select(lot => new Choice(lot.Id.ToString(CultureInfo.InvariantCulture), $"{lot.Ingredient.Name}, lot {lot.LotCode}", $"received {shop.Date(lot.ReceivedOn)}{(lot.UsedUpAt is null ? "" : ", used up")}"))];

    public IReadOnlyList<Choice> ToStrike =>
        [.. Uses.Where(use => use.StruckAt is null).Select(use => new Choice(use.Id.ToString(CultureInfo.InvariantCulture), $"{use.Lot.Ingredient.Name}, lot {use.Lot.LotCode}", Amount(use)))];

    private List<IngredientLot> _lots = [];

    public IActionResult OnGet(int id) => Read(id) ? Page() : NotFound();

    public IActionResult OnPostNote(int id)
    {
        if (!Read(id))
            return NotFound();
        if (_lots.FirstOrDefault(lot => lot.Id.ToString(CultureInfo.InvariantCulture) == Input.Lot) is not { } lot)
        {
            ModelState.AddModelError("Input.Lot", "Choose the lot it came from.");
            return Page();
        }

        var note = NoteOf(lot);
        return ModelState.IsValid ? After(verbs.Run("note a lot", Hand, FormKey, act => records.NoteLot(note, act)), id, $"Lot {lot.LotCode} is noted.") : Page();
    }

    public IActionResult OnPostStrike(int id)
    {
        if (!Read(id))
            return NotFound();
        if (Input.Use is not { } use || Uses.All(one => one.Id != use))
        {
            ModelState.AddModelError("Input.Use", "Choose what is struck out.");
            return Page();
        }

        return After(verbs.Run("strike out a lot of a load", Hand, FormKey, act => records.StrikeLotUse(use, Input.Because, act)), id, "Struck out. Note the right lot.");
    }

    public string Amount(LotUse use) => LarderWords.Of(use.Lot.Ingredient, use.Amount, use.Pieces);

    /// <summary>What the lot was for goes by its ingredient; an amount left empty is all that is not noted yet.</summary>
    private LotNote NoteOf(IngredientLot lot)
    {
        var formula = Mixed.Batch.FormulaVersion;
        var position = lot.IngredientId == formula.CasingIngredientId || lot.IngredientId == formula.AddedFatIngredientId
            ? null : formula.Ingredients.OrderBy(line => line.Position).FirstOrDefault(line => line.IngredientId == lot.IngredientId)?.Position;
        if (lot.Ingredient.GoesByPiece)
            return new LotNote(Mixed.Id, null, lot.Id, Weight.Zero, ModelState.Read(CountText.Parse(Input.Amount), "Input.Amount"));
        var noted = Uses.Where(use => use.StruckAt is null && use.Position == position && !use.Lot.Ingredient.GoesByPiece).Aggregate(Weight.Zero, (sum, use) => sum + use.Amount);
        var went = position is { } line ? Mixed.Ingredients.Single(one => one.Position == line).Weighed : Mixed.FatWeighed ?? Weight.Zero;
        return new LotNote(
            Mixed.Id, position, lot.Id,
            string.IsNullOrWhiteSpace(Input.Amount) ? Weight.Max(Weight.Zero, went - noted) : ModelState.Read(WeightText.Parse(Input.Amount, lot.Ingredient.BoughtIn), "Input.Amount"), 0);
    }

    private IActionResult After(Outcome outcome, int id, string said)
    {
        if (outcome.IsDone)
        {
            Say(said);
            return RedirectToPage(null, null, new { id });
        }

        ModelState.Add(outcome.Findings);
        return Page();
    }

    private bool Read(int id)
    {
        var load = records.Loads.AsNoTrackingWithIdentityResolution()
            .Include(one => one.Batch).ThenInclude(batch => batch.Product)
            .Include(one => one.Batch).ThenInclude(batch => batch.FormulaVersion).ThenInclude(formula => formula.Ingredients)
            .Include(one => one.Ingredients)
            .Include(one => one.LotUses).ThenInclude(use => use.Lot).ThenInclude(lot => lot.Ingredient)
            .AsSplitQuery()
            .SingleOrDefault(one => one.Id == id);
        if (load?.MixedAt is null)
            return false;
        Mixed = load;
        var formula = load.Batch.FormulaVersion;
        int[] ids = [.. formula.Ingredients.Select(line => line.IngredientId).Append(formula.AddedFatIngredientId).Append(formula.CasingIngredientId).OfType<int>().Distinct()];
        _lots = ids.Length == 0 ? [] :
        [
            .. records.IngredientLots.AsNoTracking().Include(lot => lot.Ingredient).Where(lot => ids.Contains(lot.IngredientId) && lot.StruckAt == null)
                .OrderByDescending(lot => lot.ReceivedOn).Take(MostOffered).AsEnumerable().OrderBy(lot => lot.Ingredient.Name).ThenByDescending(lot => lot.ReceivedOn)
        ];
        return true;
    }

    public sealed class LotInput
    {
        public string Lot { get; set; } = "";

        /// <summary>A weight, or pieces of a casing; empty for all that is not noted yet.</summary>
        public string Amount { get; set; } = "";

        public int? Use { get; set; }

        public string Because { get; set; } = "";
    }
}
