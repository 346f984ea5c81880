using Microsoft.AspNetCore.Mvc.ModelBinding;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Forms;

namespace ProcessorDesk.Web.Pages.Office;

/// <summary>A price list as it is typed.</summary>
public sealed class PriceListInput
{
    public string Name { get; set; } = "";

    public DateOnly? StartsOn { get; set; }

    public List<PriceInput> Lines { get; set; } = [];

    public static PriceListInput Of(PriceList list) => new()
    {
        Name = list.Name,
        StartsOn = list.StartsOn,
        Lines = [.. list.Prices.OrderBy(price => price.For).ThenBy(price => price.Id).Select(PriceInput.Of)],
    };

    /// <summary>The prices this makes, blank rows left out; null where something can't be read, which is noted on its field.</summary>
    /// <param name="products">Names of the products, by id.</param>
    public IReadOnlyList<Price>? Read(ModelStateDictionary state, IReadOnlyDictionary<int, string> products)
    {
        if (string.IsNullOrWhiteSpace(Name))
            state.AddModelError("Input.Name", "Name the list, for example Autumn 2026.");
        if (StartsOn is null && !state.HasProblem("Input.StartsOn"))
            state.AddModelError("Input.StartsOn", "Choose the day from which these prices are asked.");
        var prices = Lines.Index().Where(line => !line.Item.IsEmpty)
            .Select(line => (Field: FieldOf(line.Index), Price: line.Item.Read(state, FieldOf(line.Index), products)))
            .ToList();
        if (prices.Count == 0)
            state.AddModelError("", "There is no price in the list. Fill in one at least.");
        foreach (var again in prices.Where(one => one.Price is not null).GroupBy(one => Charged(one.Price!)).SelectMany(same => same.Skip(1)))
            state.AddModelError(again.Field + ".Amount", "This stands in the list once already. Take one of the two out.");
        return state.IsValid ? [.. prices.Select(one => one.Price!)] : null;
    }

    private static string FieldOf(int line) => FormattableString.Invariant($"Input.Lines[{line}]");

    /// <summary>What is charged for; an animal may have several charges, told apart by their text, all else has one.</summary>
    private static object Charged(Price price) => (
        price.For, price.Species, price.ArrivalState, price.ProductId,
        price.For is PriceFor.Animal or PriceFor.Extra ? price.Text.ToUpperInvariant() : "");
}
