using System.Globalization;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Forms;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>The lots a load may be made of: the open ones of each ingredient of its formula. One query.</summary>
public sealed class LoadLots
{
    private readonly ILookup<int, LotOnHand> _open;

    private LoadLots(ILookup<int, LotOnHand> open) => _open = open;

    /// <summary>For a load that is mixed: nothing to choose from any more.</summary>
    public static LoadLots None { get; } = new(Array.Empty<LotOnHand>().ToLookup(lot => lot.IngredientId));

    public static LoadLots Of(RecordsContext records, FormulaVersion formula)
    {
        int[] ids = [.. formula.Ingredients.Select(line => line.IngredientId).Append(formula.AddedFatIngredientId).Append(formula.CasingIngredientId).OfType<int>().Distinct()];
        return new LoadLots((ids.Length == 0 ? [] : records.IngredientLots.Open().Where(lot => ids.Contains(lot.IngredientId)).OnHand(records)).ToLookup(lot => lot.IngredientId));
    }

    /// <summary>The lot a choice names; null for "no lot noted".</summary>
    public LotOnHand? Find(int? ingredientId, string chosen) =>
        ingredientId is { } id ? _open[id].FirstOrDefault(lot => lot.Id.ToString(CultureInfo.InvariantCulture) == chosen) : null;

    /// <summary>The oldest with something left; empty where there is none.</summary>
    public string Oldest(int? ingredientId) => ingredientId is not { } id ? ""
        : _open[id].FirstOrDefault(lot => lot.Left.IsPositive || lot.PiecesLeft > 0)?.Id.ToString(CultureInfo.InvariantCulture) ?? "";

    /// <summary>Empty where the line names no ingredient: then there is nothing to choose from.</summary>
    public IReadOnlyList<Choice> Choices(int? ingredientId) => ingredientId is not { } id ? [] :
    [
        .. _open[id].Select(lot => new Choice(
            lot.Id.ToString(CultureInfo.InvariantCulture), lot.LotCode,
            string.Join(", ", new[] { $"received {lot.ReceivedOn.ToString("d MMM", CultureInfo.InvariantCulture)}", Left(lot), LarderWords.Strength(lot.Nitrite, lot.Nitrate) }.Where(words => words != ""))))
    ];

    private static string Left(LotOnHand lot) => (lot.Pieces > 0 ? LarderWords.Pieces(lot.PiecesLeft) : LarderWords.Amount(lot.Left, WeightUnit.Pound)) + " left";
}
