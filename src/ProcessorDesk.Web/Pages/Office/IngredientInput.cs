using System.Globalization;
using Microsoft.AspNetCore.Mvc.ModelBinding;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Blending;
using ProcessorDesk.Trade.Curing;
using ProcessorDesk.Web.Forms;

namespace ProcessorDesk.Web.Pages.Office;

/// <summary>An ingredient as it is typed. A strength left blank is refused: zero is an answer, blank is not.</summary>
public sealed class IngredientInput
{
    public string Name { get; set; } = "";

    public IngredientKind? Kind { get; set; }

    public string Nitrite { get; set; } = "";

    public string Nitrate { get; set; } = "";

    public bool InMeatBlock { get; set; }

    public bool IsPork { get; set; }

    /// <summary>The id of a published fat content; empty where the fat is typed.</summary>
    public string FatSource { get; set; } = "";

    public string Fat { get; set; } = "0";

    public string Salt { get; set; } = "0";

    public string Water { get; set; } = "0";

    public List<Allergen> Contains { get; set; } = [];

    /// <summary>Empty where nobody knows.</summary>
    public string Cost { get; set; } = "";

    /// <summary>A weight, or pieces of a casing; empty where nobody watches it.</summary>
    public string Least { get; set; } = "";

    public WeightUnit BoughtIn { get; set; } = WeightUnit.Pound;

    public static IngredientInput Of(Ingredient ingredient) => new()
    {
        Name = ingredient.Name,
        Kind = ingredient.Kind,
        Nitrite = Figure(ingredient.Nitrite),
        Nitrate = Figure(ingredient.Nitrate),
        InMeatBlock = ingredient.InMeatBlock,
        IsPork = ingredient.IsPork,
        FatSource = ingredient.FatSource ?? "",
        Fat = Figure(ingredient.Fat),
        Salt = Figure(ingredient.Salt),
        Water = Figure(ingredient.Water),
        Contains = [.. AllergenWords.Of(ingredient.Contains)],
        Cost = ingredient.Cost is { } cost ? cost.Print().TrimStart('$') : "",
        Least = ingredient.GoesByPiece
            ? ingredient.LeastPieces == 0 ? "" : ingredient.LeastPieces.ToString(CultureInfo.InvariantCulture)
            : ingredient.LeastOnHand.IsZero ? "" : LarderWords.Amount(ingredient.LeastOnHand, ingredient.BoughtIn),
        BoughtIn = ingredient.BoughtIn,
    };

    /// <summary>What it says; null where something can't be kept, which is noted on its field.</summary>
    public IngredientFacts? Read(ModelStateDictionary state)
    {
        if (Kind is null)
            state.AddModelError("Input.Kind", "Choose what it is.");
        var nitrite = Strength(state, Nitrite, nameof(Nitrite));
        var nitrate = Strength(state, Nitrate, nameof(Nitrate));
        var published = FatContents.All.FirstOrDefault(content => content.Id == FatSource);
        var fat = published?.Fat ?? Share(state, Fat, nameof(Fat));
        var facts = new IngredientFacts(Name, Kind ?? IngredientKind.Other, nitrite ?? Proportion.Zero, nitrate ?? Proportion.Zero)
        {
            InMeatBlock = InMeatBlock,
            IsPork = IsPork,
            Fat = fat,
            FatSource = published?.Id,
            Salt = Share(state, Salt, nameof(Salt)),
            Water = Share(state, Water, nameof(Water)),
            Contains = Contains.Aggregate(Allergen.None, (all, one) => all | one),
            Cost = string.IsNullOrWhiteSpace(Cost) ? null : state.Read(MoneyText.Parse(Cost), "Input.Cost"),
            LeastOnHand = Kind == IngredientKind.Casing || string.IsNullOrWhiteSpace(Least) ? Weight.Zero : state.Read(WeightText.Parse(Least, BoughtIn), "Input.Least"),
            LeastPieces = Kind == IngredientKind.Casing && !string.IsNullOrWhiteSpace(Least) ? state.Read(CountText.Parse(Least), "Input.Least") : 0,
            BoughtIn = BoughtIn,
        };
        if (state.IsValid)
            state.Add(Ingredient.Check(facts));
        return state.IsValid ? facts : null;
    }

    private static Proportion? Strength(ModelStateDictionary state, string typed, string agent)
    {
        if (string.IsNullOrWhiteSpace(typed))
            state.Add(CureStrength.Check(agent == nameof(Nitrite) ? null : Proportion.Zero, agent == nameof(Nitrate) ? null : Proportion.Zero));
        else if (ProportionText.Parse(typed).Try(out var strength, out var problem))
            return strength;
        else
            state.AddModelError("Input." + agent, problem);
        return null;
    }

    /// <summary>Empty is none of it.</summary>
    private static Proportion Share(ModelStateDictionary state, string typed, string field) =>
        string.IsNullOrWhiteSpace(typed) ? Proportion.Zero : state.Read(ProportionText.Parse(typed), "Input." + field);

    private static string Figure(Proportion share) => share.Percent.ToString("0.####", CultureInfo.InvariantCulture);
}
