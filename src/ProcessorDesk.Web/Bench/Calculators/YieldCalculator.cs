using ProcessorDesk.Trade.Yields;

namespace ProcessorDesk.Web.Bench.Calculators;

/// <summary>What a weight leads to by a published ratio.</summary>
public static class YieldCalculator
{
    private static readonly Field<Species> s_species = SpeciesField.Any;

    private static readonly Field<CarcassState> s_from = State("from", "Weighed as");
    private static readonly Field<CarcassState> s_to = State("to", "Wanted as");
    private static readonly Field<Weight> s_weight = Fields.Pounds("weightLb", "Weight");

    public static Calculator Calculator { get; } = new(
        "yield", "Yield",
        "What an animal will probably give, from one state of the carcass straight to another by a published ratio. Ratios are never chained.",
        [s_species, s_from, s_to, s_weight],
        [
            Figure.Pounds("typicalLb", "Typical", "by the published ratio"),
            Figure.Pounds("usualLowLb", "Usual, low", "low end of the range most results fall in") with { MayBeNull = true },
            Figure.Pounds("usualHighLb", "Usual, high", "high end of it") with { MayBeNull = true },
            Figure.Pounds("extremeLowLb", "Extreme, low", "low end of the widest range published") with { MayBeNull = true },
            Figure.Pounds("extremeHighLb", "Extreme, high", "high end of it") with { MayBeNull = true },
            Figure.Source,
        ],
        ["An estimate for an ordinary animal. How it is shot, dressed and trimmed decides more than any ratio."],
        "species=deer&from=fieldDressed&to=boneless&weightLb=100",
        Work);

    private static Field<CarcassState> State(string name, string label) => Fields.Choice(
        name, label,
        ("live", "Live", CarcassState.Live), ("fieldDressed", "Field-dressed", CarcassState.FieldDressed), ("hanging", "Hanging", CarcassState.Hanging),
        ("quarters", "Quarters", CarcassState.Quarters), ("boneless", "Boneless", CarcassState.Boneless), ("boneIn", "Bone-in cuts", CarcassState.BoneIn),
        ("takeHome", "Take-home", CarcassState.TakeHome));

    private static Outcome Work(Entries entries)
    {
        var weight = entries.Of(s_weight);
        if (PublishedRatios.Find(entries.Of(s_species), entries.Of(s_from), entries.Of(s_to)) is not { } ratio)
            return Refusal.Impossible(s_to.Name, "No published ratio leads from the one to the other for this animal.");
        if (Forecasting.Forecast(entries.Of(s_species), entries.Of(s_from), entries.Of(s_to), weight) is not { } forecast)
            return Refusal.Impossible(s_weight.Name, $"{PlainNumber.PrintPounds(weight)} is too little for the published rule, which takes {PlainNumber.PrintPounds(-ratio.Offset)} off.");
        return new Answer([.. Steps(ratio, forecast, weight)])
        {
            Published = [.. Ranges(ratio)],
            Figures =
            {
                ["typicalLb"] = PlainNumber.Pounds(forecast.Typical),
                ["usualLowLb"] = PlainNumber.Pounds(forecast.UsualLow),
                ["usualHighLb"] = PlainNumber.Pounds(forecast.UsualHigh),
                ["extremeLowLb"] = PlainNumber.Pounds(forecast.ExtremeLow),
                ["extremeHighLb"] = PlainNumber.Pounds(forecast.ExtremeHigh),
                ["source"] = forecast.Source,
            },
        };
    }

    private static IEnumerable<string> Steps(PublishedRatio ratio, YieldForecast forecast, Weight weight)
    {
        var offset = ratio.Offset.IsZero ? "" : (ratio.Offset.IsNegative ? " − " : " + ") + PlainNumber.PrintPounds(ratio.Offset.IsNegative ? -ratio.Offset : ratio.Offset);
        yield return $"{PlainNumber.PrintPounds(weight)} × {PlainNumber.Print(ratio.Factor)}{offset} = {PlainNumber.PrintPounds(forecast.Typical)}";
        foreach (var (spread, low, high, name) in new[] { (ratio.Usual, forecast.UsualLow, forecast.UsualHigh, "usually"), (ratio.Extreme, forecast.ExtremeLow, forecast.ExtremeHigh, "at the extremes") })
        {
            if (spread is null || low is not { } least || high is not { } most)
                continue;
            var of = PlainNumber.PrintPounds(spread.OfTypical ? forecast.Typical : weight);
            yield return $"{name} {of} × {PlainNumber.Print(spread.Low)} = {PlainNumber.PrintPounds(least)} to {of} × {PlainNumber.Print(spread.High)} = {PlainNumber.PrintPounds(most)}";
        }
    }

    private static IEnumerable<(string, string)> Ranges(PublishedRatio ratio)
    {
        if (ratio.Usual is { } usual)
            yield return ($"Usually {Range(usual)}", ratio.Source);
        if (ratio.Extreme is { } extreme)
            yield return ($"At the extremes {Range(extreme)}", ratio.Source);
        if (ratio.Usual is null && ratio.Extreme is null)
            yield return ("No range is published.", ratio.Source);
    }

    private static string Range(Spread spread) =>
        $"{PlainNumber.Print(spread.Low)} to {PlainNumber.Print(spread.High)} of {(spread.OfTypical ? "the typical result" : "the weight given")}";
}
