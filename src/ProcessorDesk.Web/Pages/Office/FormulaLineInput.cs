using System.Globalization;
using Microsoft.AspNetCore.Mvc.ModelBinding;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Formulas;

namespace ProcessorDesk.Web.Pages.Office;

/// <summary>One line of a formula as it is typed: what, and how much of it.</summary>
public sealed class FormulaLineInput
{
    /// <summary>The ingredient's id; empty where none is chosen.</summary>
    public string Ingredient { get; set; } = "";

    public string Amount { get; set; } = "";

    public FormulaBasis Basis { get; set; } = FormulaBasis.PercentOfBlock;

    /// <summary>A row nobody typed anything into.</summary>
    public bool IsEmpty => string.IsNullOrWhiteSpace(Ingredient + Amount);

    /// <summary>A line older than the larder is looked up in it by its name.</summary>
    public static FormulaLineInput Of(FormulaIngredient line, IReadOnlyList<Ingredient> larder) => new()
    {
        Ingredient = (line.IngredientId ?? larder.FirstOrDefault(one => one.Name.Equals(line.Name, StringComparison.OrdinalIgnoreCase))?.Id)?.ToString(CultureInfo.InvariantCulture) ?? "",
        Amount = line.Amount.ToString("0.######", CultureInfo.InvariantCulture),
        Basis = line.Basis,
    };

    /// <summary>The line; null where something is wrong with it, which is noted on its field.</summary>
    public FormulaIngredient? Read(ModelStateDictionary state, string field, int position, IReadOnlyList<Ingredient> larder)
    {
        var ingredient = larder.FirstOrDefault(one => one.Id.ToString(CultureInfo.InvariantCulture) == Ingredient);
        if (ingredient is null)
            state.AddModelError(field + ".Ingredient", "Choose the ingredient. What is not on the list is added under Ingredients.");
        var hasAmount = RatioText.Parse(Amount).Try(out var amount, out _) && amount > Ratio.Zero;
        if (!hasAmount)
            state.AddModelError(field + ".Amount", "Type how much of it, more than zero, for example 1.75.");
        return ingredient is null || !hasAmount ? null : new FormulaIngredient(position, ingredient, Basis, amount.ToDecimal());
    }
}
