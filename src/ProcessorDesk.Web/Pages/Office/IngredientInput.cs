using System.Globalization;
using Microsoft.AspNetCore.Mvc.ModelBinding;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Curing;
using ProcessorDesk.Trade.Formulas;
using ProcessorDesk.Web.Forms;

namespace ProcessorDesk.Web.Pages.Office;

/// <summary>One line of a formula as it is typed. A strength left blank is refused: zero is an answer, blank is not.</summary>
public sealed class IngredientInput
{
    public string Name { get; set; } = "";

    public FormulaBasis Basis { get; set; } = FormulaBasis.PercentOfBlock;

    public string Amount { get; set; } = "";

    public string Nitrite { get; set; } = "";

    public string Nitrate { get; set; } = "";

    public bool IsPork { get; set; }

    public string Allergens { get; set; } = "";

    /// <summary>A row nobody typed anything into.</summary>
    public bool IsEmpty => string.IsNullOrWhiteSpace(Name + Amount + Nitrite + Nitrate + Allergens);

    public static IngredientInput Of(FormulaIngredient line) => new()
    {
        Name = line.Name,
        Basis = line.Basis,
        Amount = line.Amount.ToString("0.######", CultureInfo.InvariantCulture),
        Nitrite = line.Nitrite.Percent.ToString("0.####", CultureInfo.InvariantCulture),
        Nitrate = line.Nitrate.Percent.ToString("0.####", CultureInfo.InvariantCulture),
        IsPork = line.IsPork,
        Allergens = line.AllergenWords ?? "",
    };

    /// <summary>The line; null where something is wrong with it, which is noted on its field.</summary>
    public FormulaIngredient? Read(ModelStateDictionary state, string field, int position)
    {
        var problems = state.ErrorCount;
        if (string.IsNullOrWhiteSpace(Name))
            state.AddModelError(field + ".Name", "Name the ingredient.");
        var nitrite = Strength(state, Nitrite, field, nameof(Nitrite));
        var nitrate = Strength(state, Nitrate, field, nameof(Nitrate));
        var amount = AmountOf(state, field + ".Amount");
        if (nitrite is not null && nitrate is not null)
            state.Add(CureStrength.Check(nitrite, nitrate), field);
        return state.ErrorCount > problems
            ? null
            : new FormulaIngredient(position, Name, Basis, amount, nitrite!.Value, nitrate!.Value, IsPork);
    }

    private decimal AmountOf(ModelStateDictionary state, string field)
    {
        if (!RatioText.Parse(Amount).Try(out var amount, out _) || amount <= Ratio.Zero)
        {
            state.AddModelError(field, "Type how much of it, more than zero, for example 1.75.");
            return 0;
        }

        return (decimal)amount.Numerator / (decimal)amount.Denominator;
    }

    private static Proportion? Strength(ModelStateDictionary state, string typed, string field, string agent)
    {
        if (string.IsNullOrWhiteSpace(typed))
        {
            state.Add(CureStrength.Check(agent == nameof(Nitrite) ? null : Proportion.Zero, agent == nameof(Nitrate) ? null : Proportion.Zero), field);
            return null;
        }

        if (ProportionText.Parse(typed).Try(out var strength, out var problem))
            return strength;
        state.AddModelError($"{field}.{agent}", problem);
        return null;
    }
}
