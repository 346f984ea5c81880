using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Yields;

namespace ProcessorDesk.Records;

/// <summary>The lean of a job held against what its animals promised when they came in.</summary>
public static class LeanYield
{
    /// <summary>
    /// Null where one animal was not weighed or no ratio is published for its state: a part of the lean can't be held against
    /// the whole. Packed cuts are boneless meat too, and count.
    /// </summary>
    public static YieldStatement? Of(JobWeights weights, ScaleDivision division)
    {
        var forecasts = weights.Animals.Select(Forecast).ToList();
        if (forecasts.Count == 0 || forecasts.Any(one => one is null))
            return null;
        var from = division.Sum(weights.Animals.Select(animal => animal.Share.Of(animal.Arrival!.Value, division)));
        var actual = division.Sum([weights.Lean, weights.Cuts]);
        return YieldStatement.Of(from, actual, Forecasting.Together([.. forecasts.Select(one => one!)]), division);
    }

    private static YieldForecast? Forecast(AnimalWeights animal) =>
        animal.Arrival is { } arrival && Forecasting.StateOf(animal.ArrivalState) is { } state
            ? Forecasting.Forecast(animal.Species, state, CarcassState.Boneless, animal.Fraction.Times(arrival))
            : null;
}
