using System.Globalization;
using Microsoft.AspNetCore.Mvc.ModelBinding;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Curing;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>A lot as it is typed off its label and its slip.</summary>
public sealed class ReceiveInput
{
    /// <summary>The id; empty where none is chosen.</summary>
    public string Ingredient { get; set; } = "";

    public string Supplier { get; set; } = "";

    public string LotCode { get; set; } = "";

    public string Establishment { get; set; } = "";

    public string ReceivedOn { get; set; } = "";

    /// <summary>A weight with its unit, or pieces.</summary>
    public string Amount { get; set; } = "";

    /// <summary>Off this lot's label; empty takes what the ingredient states, but never for a cure.</summary>
    public string Nitrite { get; set; } = "";

    public string Nitrate { get; set; } = "";

    public string Note { get; set; } = "";

    /// <summary>What came in; null where something can't be read, which is noted on its field.</summary>
    public LotReceipt? Read(ModelStateDictionary state, IReadOnlyList<Ingredient> larder, ShopDay shop)
    {
        var ingredient = larder.FirstOrDefault(one => one.Id.ToString(CultureInfo.InvariantCulture) == Ingredient);
        if (ingredient is null)
        {
            state.AddModelError("Input.Ingredient", "Choose what came in.");
            return null;
        }

        if (!DateOnly.TryParse(ReceivedOn, CultureInfo.InvariantCulture, out var day))
            state.AddModelError("Input.ReceivedOn", "Type the day it came.");
        else if (day > shop.Today)
            state.AddModelError("Input.ReceivedOn", "That day is still to come. Type the day it came.");
        var weight = ingredient.GoesByPiece ? Weight.Zero : state.Read(WeightText.Parse(Amount, ingredient.BoughtIn), "Input.Amount");
        var pieces = ingredient.GoesByPiece ? state.Read(CountText.Parse(Amount), "Input.Amount") : 0;
        var nitrite = Strength(state, Nitrite, nameof(Nitrite), ingredient, ingredient.Nitrite);
        var nitrate = Strength(state, Nitrate, nameof(Nitrate), ingredient, ingredient.Nitrate);
        return state.IsValid ? new LotReceipt(ingredient.Id, LotCode, day, weight, pieces, nitrite, nitrate, Supplier, Establishment, Note) : null;
    }

    private static Proportion Strength(ModelStateDictionary state, string typed, string agent, Ingredient ingredient, Proportion stated)
    {
        if (!string.IsNullOrWhiteSpace(typed))
            return state.Read(ProportionText.Parse(typed), "Input." + agent);
        if (ingredient.Kind == IngredientKind.Cure)
            state.Add(CureStrength.Check(agent == nameof(Nitrite) ? null : Proportion.Zero, agent == nameof(Nitrate) ? null : Proportion.Zero));
        return stated;
    }
}
