using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;
using ProcessorDesk.Trade.Yields;

namespace ProcessorDesk.Web.Pages.Counter;

/// <summary>What it will probably cost before tax, at the prices in force: from the low end of the forecast to the high.</summary>
/// <param name="Low">Null where nothing can be said.</param>
/// <param name="Gaps">What is not counted, in words.</param>
public sealed record PriceOutlook(Money? Low, Money? High, IReadOnlyList<string> Gaps)
{
    /// <summary>"$165.00 to $210.00 before tax"; empty where nothing can be said.</summary>
    public string Print() =>
        Low is not { } low || High is not { } high ? ""
        : low == high ? $"{low.Print()} before tax"
        : $"{low.Print()} to {high.Print()} before tax";

    /// <summary>The invoice's own rule, once for the low end of every forecast and once for the high.</summary>
    public static PriceOutlook Of(
        IReadOnlyList<Price> prices, ShopSettings shop, IReadOnlyList<(AnimalInput Typed, Ratio Share)> animals,
        (GrindSplit Low, GrindSplit High)? splits, IReadOnlyList<FormulaVersion> offered)
    {
        if (prices.Count == 0)
            return new PriceOutlook(null, null, ["The price list in force has no prices yet."]);
        var low = Charge(spread => spread.Low, splits?.Low);
        var high = Charge(spread => spread.High, splits?.High);
        string[] gaps = splits is null ? [.. low.Notes, "What is made of the trim is not counted: its weight is not foretold."] : [.. low.Notes, .. high.Notes];
        return new PriceOutlook(Sum(low), Sum(high), [.. gaps.Distinct()]);

        JobCharges Charge(Func<(Weight Low, Weight High), Weight> end, GrindSplit? split) => JobCharges.Of(
            prices,
            prices,
            shop,
            [.. animals.Select(animal => new ChargedAnimal(
                Wording.Of(animal.Typed.Species), animal.Typed.Species, animal.Typed.State, OwnersShare.Alone(animal.Share),
                Hanging(animal.Typed) is { } spread ? end(spread) : null))],
            [.. split?.Allotments.Select(given => ChargedProduct.Of(offered.First(formula => formula.Product.Name == given.Ask.Name).ProductId, given)) ?? []],
            []);
    }

    private static Money Sum(JobCharges charges) => Money.Sum(charges.Lines.Select(line => line.Amount));

    /// <summary>Of the whole animal.</summary>
    private static (Weight Low, Weight High)? Hanging(AnimalInput typed)
    {
        if (typed.State is not { } state || !WeightText.Parse(typed.Weight, WeightUnit.Pound).Try(out var weight, out _))
            return null;
        if (state == ArrivalState.Skinned)
            return (weight, weight);
        return Forecasting.StateOf(state) is { } from && Forecasting.Forecast(typed.Species, from, CarcassState.Hanging, weight) is { } forecast
            ? (forecast.Low ?? forecast.Typical, forecast.High ?? forecast.Typical)
            : null;
    }
}
