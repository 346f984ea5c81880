namespace ProcessorDesk.Trade.Yields;

/// <summary>What a recorded weight leads to directly by a published ratio. Nothing is chained, nothing guessed.</summary>
public static class Forecasting
{
    /// <summary>What is said where nobody has published a ratio.</summary>
    public const string NonePublished = "none published";

    /// <summary>The forecast; null where no direct ratio is published, or the weight is too small for its rule.</summary>
    public static YieldForecast? Forecast(Species species, CarcassState from, CarcassState to, Weight weight) =>
        PublishedRatios.Find(species, from, to)?.Forecast(weight);

    /// <summary>
    /// The state an arrival is weighed in; null for boned meat, which is already what a forecast would lead to, and where
    /// nobody has said.
    /// </summary>
    public static CarcassState? StateOf(ArrivalState arrival) => arrival switch
    {
        ArrivalState.Whole => CarcassState.Live,
        ArrivalState.FieldDressed => CarcassState.FieldDressed,
        ArrivalState.Skinned => CarcassState.Hanging,
        ArrivalState.Quarters => CarcassState.Quarters,
        ArrivalState.FreshBoned => null,
        ArrivalState.FrozenBoned => null,
        ArrivalState.Unknown => null,
    };

    /// <summary>
    /// Several animals as one: each figure added up. A range one of them lacks the sum lacks too. Sources are named once each,
    /// and the weakest mark holds for all.
    /// </summary>
    /// <exception cref="ArgumentException">There is no forecast to add.</exception>
    public static YieldForecast Together(IReadOnlyList<YieldForecast> forecasts)
    {
        if (forecasts.Count == 0)
            throw new ArgumentException("There is no forecast to add.", nameof(forecasts));
        return new YieldForecast(
            forecasts.Aggregate(Weight.Zero, (sum, forecast) => sum + forecast.Typical),
            Sum(forecasts, forecast => forecast.UsualLow),
            Sum(forecasts, forecast => forecast.UsualHigh),
            Sum(forecasts, forecast => forecast.ExtremeLow),
            Sum(forecasts, forecast => forecast.ExtremeHigh),
            string.Join("; ", forecasts.Select(forecast => forecast.Source).Distinct()),
            forecasts.Select(forecast => forecast.Mark).MaxBy(Weakness)!);
    }

    private static Weight? Sum(IReadOnlyList<YieldForecast> forecasts, Func<YieldForecast, Weight?> figure) =>
        forecasts.Select(figure).Aggregate((Weight?)Weight.Zero, (sum, next) => sum + next);

    private static int Weakness(string mark) => Array.IndexOf(["A", "B", "C", "M", "–"], mark);
}
