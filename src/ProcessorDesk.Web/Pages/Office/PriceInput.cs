using System.Globalization;
using Microsoft.AspNetCore.Mvc.ModelBinding;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Forms;

namespace ProcessorDesk.Web.Pages.Office;

/// <summary>One price as it is typed; what it is for was chosen when its row was added.</summary>
public sealed class PriceInput
{
    public PriceFor For { get; set; } = PriceFor.Extra;

    public Species? Species { get; set; }

    /// <summary>Null for any.</summary>
    public ArrivalState? State { get; set; }

    public int? ProductId { get; set; }

    public string Text { get; set; } = "";

    public ChargeBasis Basis { get; set; } = ChargeBasis.Each;

    public string Amount { get; set; } = "";

    public bool Taxed { get; set; }

    /// <summary>A row nobody typed anything into.</summary>
    public bool IsEmpty => Species is null && State is null && ProductId is null && string.IsNullOrWhiteSpace(Amount)
        && (string.IsNullOrWhiteSpace(Text) || Text.Trim() == UsualText(For));

    /// <summary>Whether the invoice says what is typed here; a product stands there by its own name, a deposit as a deposit.</summary>
    public bool HasText => For is PriceFor.Animal or PriceFor.AddedFat or PriceFor.Extra;

    /// <summary>A new row, with what is usual in it.</summary>
    public static PriceInput New(PriceFor @for) => new() { For = @for, Text = UsualText(@for), Basis = BasesOf(@for)[0] };

    public static PriceInput Of(Price price) => new()
    {
        For = price.For,
        Species = price.Species,
        State = price.ArrivalState,
        ProductId = price.ProductId,
        Text = price.Text,
        Basis = price.Basis,
        Amount = price.Each.Dollars.ToString("0.00", CultureInfo.InvariantCulture),
        Taxed = price.Taxed,
    };

    /// <summary>What a price of this kind can be counted by.</summary>
    public static IReadOnlyList<ChargeBasis> BasesOf(PriceFor @for) => @for switch
    {
        PriceFor.Animal => [ChargeBasis.Each, ChargeBasis.HangingPound],
        PriceFor.Product => [ChargeBasis.FinishedPound, ChargeBasis.GreenPound, ChargeBasis.LeanPound, ChargeBasis.Each],
        PriceFor.AddedFat => [ChargeBasis.AddedFatPound],
        PriceFor.Extra => [ChargeBasis.Each],
        PriceFor.Deposit => [ChargeBasis.Each],
    };

    /// <summary>The price; null where something is wrong with it, which is noted on its field.</summary>
    /// <param name="products">Names of the products, by id.</param>
    public Price? Read(ModelStateDictionary state, string field, IReadOnlyDictionary<int, string> products)
    {
        var problems = state.ErrorCount;
        if (!BasesOf(For).Contains(Basis) && !state.HasProblem(field + ".Basis"))
            state.AddModelError(field + ".Basis", "Choose what this is counted by.");
        if (For == PriceFor.Animal && Species is null && !state.HasProblem(field + ".Species"))
            state.AddModelError(field + ".Species", "Choose the species.");
        if (For == PriceFor.Product && (ProductId is null || !products.ContainsKey(ProductId.Value)) && !state.HasProblem(field + ".ProductId"))
            state.AddModelError(field + ".ProductId", "Choose the product.");
        if (HasText && string.IsNullOrWhiteSpace(Text))
            state.AddModelError(field + ".Text", "Type what the invoice calls it.");
        var cents = Basis == ChargeBasis.Each
            ? (int)state.Read(MoneyText.Parse(Amount), field + ".Amount").Cents
            : state.Read(MoneyText.ParsePerPound(Amount), field + ".Amount").CentsPerPound;
        return state.ErrorCount > problems
            ? null
            : new Price(
                For, TextOf(products), Basis, cents, Taxed && For != PriceFor.Deposit,
                For == PriceFor.Animal ? Species : null, For == PriceFor.Animal ? State : null, For == PriceFor.Product ? ProductId : null);
    }

    /// <summary>What the price is for and how much it is, in one line.</summary>
    public string Words(IReadOnlyDictionary<int, string> products)
    {
        var what = For switch
        {
            PriceFor.Animal => $"{Text}: {(Species is { } species ? Wording.Of(species) : "?")}{(State is { } state ? $", {Wording.Of(state)}" : "")}",
            PriceFor.Product => products.GetValueOrDefault(ProductId ?? 0, "?"),
            PriceFor.AddedFat => Text,
            PriceFor.Extra => Text,
            PriceFor.Deposit => "Deposit",
        };
        return $"{what} {Amount} {Wording.Of(Basis)}{(Taxed ? ", taxed" : "")}";
    }

    private string TextOf(IReadOnlyDictionary<int, string> products) => For switch
    {
        PriceFor.Animal => Text,
        PriceFor.Product => products[ProductId!.Value],
        PriceFor.AddedFat => Text,
        PriceFor.Extra => Text,
        PriceFor.Deposit => "Deposit",
    };

    private static string UsualText(PriceFor @for) => @for switch
    {
        PriceFor.Animal => "Cutting",
        PriceFor.Product => "",
        PriceFor.AddedFat => "Added fat",
        PriceFor.Extra => "",
        PriceFor.Deposit => "",
    };
}
