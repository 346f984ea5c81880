using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Balance;
using ProcessorDesk.Trade.Yields;

namespace ProcessorDesk.Web.Pages.Cutting;

/// <summary>The running balance of a job: what its animals started from, what was weighed, and the rest.</summary>
/// <param name="StartWords">"Hanging, hot" or "As they came in".</param>
/// <param name="Expected">What the start usually gives in cuts and lean; null where none is published.</param>
public sealed record TableBalance(AnimalBalance Balance, string StartWords, YieldForecast? Expected)
{
    /// <summary>More came out than went in: wrong at any time, not only at the end.</summary>
    public bool IsOver => Balance.IsFlagged && Balance.Rest.IsNegative;

    /// <summary>Null where an animal was never weighed.</summary>
    public static TableBalance? Of(JobWeights weights, Proportion tolerance, ScaleDivision division)
    {
        if (weights.Animals.Count == 0 || weights.Animals.Any(animal => (animal.Hanging ?? animal.Arrival) is null))
            return null;
        var allHung = weights.Animals.All(IsHung);
        var starts = weights.Animals.Select(animal => animal.Share.Of(allHung ? Hung(animal)!.Value : animal.Arrival ?? Hung(animal)!.Value, division)).ToList();
        var start = division.Sum(starts);
        var expected = Together(weights.Animals, allHung);
        var lines = Lines(weights, allHung, division);
        var balance = allHung && !weights.Animals.All(animal => AnimalBalance.IsUsuallyByDifference(animal.Species))
            ? AnimalBalance.Measured(start, lines, tolerance, division)
            : AnimalBalance.ByDifference(start, lines, expected, tolerance, division);
        return new TableBalance(balance, allHung ? "Hanging" : "As it came in", expected);
    }

    public static string Words(BalancePart part) => part switch
    {
        BalancePart.HideHeadFeet => "Hide, head, feet",
        BalancePart.Hanging => "Hanging",
        BalancePart.Cuts => "Cuts, packed",
        BalancePart.Lean => "Lean trim",
        BalancePart.Fat => "Fat trim",
        BalancePart.Bone => "Bone",
        BalancePart.Discard => "Thrown out",
        BalancePart.Shrink => "Shrink in the cooler",
        BalancePart.ThawAndDrip => "Thaw and drip",
        BalancePart.LeftInMachines => "Left in grinder and stuffer",
        BalancePart.GivenBack => "Given back",
        BalancePart.SideOrQuarter => "Side or quarter",
        BalancePart.IntoMix => "Into the mixer",
    };

    private static bool IsHung(AnimalWeights animal) => Hung(animal) is not null;

    /// <summary>Hot where it was weighed hot; an animal that came in skinned hangs as it came.</summary>
    private static Weight? Hung(AnimalWeights animal) =>
        animal.HotHanging ?? animal.ChilledHanging ?? (animal.ArrivalState == ArrivalState.Skinned ? animal.Arrival : null);

    private static List<BalanceLine> Lines(JobWeights weights, bool allHung, ScaleDivision division)
    {
        var shrink = allHung
            ? weights.Animals.Aggregate(Weight.Zero, (sum, animal) =>
                animal is { HotHanging: { } hot, ChilledHanging: { } chilled } ? sum + animal.Share.Of(hot - chilled, division) : sum)
            : Weight.Zero;
        BalanceLine[] lines =
        [
            new(BalancePart.Shrink, shrink), new(BalancePart.Cuts, weights.Cuts), new(BalancePart.Lean, weights.Lean),
            new(BalancePart.Fat, weights.Fat), new(BalancePart.Bone, weights.Bone), new(BalancePart.Discard, weights.Discard),
        ];
        return [.. lines.Where(line => !line.Weight.IsZero)];
    }

    private static YieldForecast? Together(IReadOnlyList<AnimalWeights> animals, bool allHung)
    {
        var each = animals.Select(animal => One(animal, allHung)).ToList();
        return each.Any(forecast => forecast is null) ? null : Forecasting.Together([.. each.OfType<YieldForecast>()]);
    }

    private static YieldForecast? One(AnimalWeights animal, bool allHung)
    {
        var (state, weight) = allHung || animal.Arrival is null
            ? ((CarcassState?)CarcassState.Hanging, Hung(animal)!.Value)
            : (Forecasting.StateOf(animal.ArrivalState), animal.Arrival.Value);
        if (state is not { } from || Forecasting.Forecast(animal.Species, from, CarcassState.Boneless, weight) is not { } whole)
            return null;
        Weight? Part(Weight? figure) => figure is { } known ? animal.Fraction.Times(known) : null;
        return whole with
        {
            Typical = animal.Fraction.Times(whole.Typical),
            UsualLow = Part(whole.UsualLow),
            UsualHigh = Part(whole.UsualHigh),
            ExtremeLow = Part(whole.ExtremeLow),
            ExtremeHigh = Part(whole.ExtremeHigh),
        };
    }
}
