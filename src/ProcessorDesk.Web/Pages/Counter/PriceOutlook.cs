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

    public static PriceOutlook Of(
        IReadOnlyList<Price> prices, ShopSettings shop, IReadOnlyList<(AnimalInput Typed, Ratio Share)> animals,
        (GrindSplit Low, GrindSplit High)? splits, IReadOnlyList<FormulaVersion> offered)
    {
        if (prices.Count == 0)
            return new PriceOutlook(null, null, ["The price list in force has no prices yet."]);
        var gaps = new List<string>();
        var (low, high) = (Money.Zero, Money.Zero);
        foreach (var (typed, share) in animals)
        {
            foreach (var price in ForAnimal(prices, typed))
            {
                if (!price.IsByPound)
                    (low, high) = (low + share.Times(price.Each), high + share.Times(price.Each));
                else if (Hanging(typed, share) is { } hanging)
                    (low, high) = (low + price.Rate.For(hanging.Low, shop.BenchDivision), high + price.Rate.For(hanging.High, shop.BenchDivision));
                else
                    gaps.Add($"{price.Text}: charged by hanging weight, which is not known yet.");
            }
        }

        if (splits is { } both)
            (low, high) = (low + Products(prices, shop, both.Low, offered), high + Products(prices, shop, both.High, offered));
        else
            gaps.Add("What is made of the trim is not counted: its weight is not foretold.");
        return new PriceOutlook(low, high, [.. gaps.Distinct()]);
    }

    /// <summary>A price for the very state goes before one for any state; what is charged by the pound is on top.</summary>
    private static IEnumerable<Price> ForAnimal(IReadOnlyList<Price> prices, AnimalInput typed)
    {
        var fitting = prices.Where(price => price.For == PriceFor.Animal && price.Species == typed.Species
            && (price.ArrivalState is null || price.ArrivalState == typed.State)).ToList();
        var exact = fitting.Any(price => price.ArrivalState is not null);
        return fitting.Where(price => !exact || price.ArrivalState is not null || price.IsByPound);
    }

    private static (Weight Low, Weight High)? Hanging(AnimalInput typed, Ratio share)
    {
        if (typed.State is not { } state || !WeightText.Parse(typed.Weight, WeightUnit.Pound).Try(out var whole, out _))
            return null;
        var weight = share.Times(whole);
        if (state == ArrivalState.Skinned)
            return (weight, weight);
        return Forecasting.StateOf(state) is { } from && Forecasting.Forecast(typed.Species, from, CarcassState.Hanging, weight) is { } forecast
            ? (forecast.Low ?? forecast.Typical, forecast.High ?? forecast.Typical)
            : null;
    }

    private static Money Products(IReadOnlyList<Price> prices, ShopSettings shop, GrindSplit split, IReadOnlyList<FormulaVersion> offered)
    {
        var fat = prices.FirstOrDefault(price => price.For == PriceFor.AddedFat);
        return Money.Sum(split.Allotments.Where(one => one.Lean.IsPositive).Select(Charge))
            + (fat?.Rate.For(shop.BenchDivision.Sum(split.Allotments.Select(one => one.AddedFat)), shop.BenchDivision) ?? Money.Zero);

        Money Charge(Allotment given)
        {
            var product = offered.First(formula => formula.Product.Name == given.Ask.Name).ProductId;
            if (prices.FirstOrDefault(price => price.For == PriceFor.Product && price.ProductId == product) is not { } price)
                return Money.Zero;
            return Counted(price.Basis, given) is { } weight ? price.Rate.For(weight, shop.BenchDivision) : price.Each;
        }
    }

    private static Weight? Counted(ChargeBasis basis, Allotment given) => basis switch
    {
        ChargeBasis.Each => null,
        ChargeBasis.HangingPound => null,
        ChargeBasis.LeanPound => given.Lean,
        ChargeBasis.GreenPound => given.Green,
        ChargeBasis.FinishedPound => given.Finished,
        ChargeBasis.AddedFatPound => given.AddedFat,
    };
}
