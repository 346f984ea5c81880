using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Yields;

namespace ProcessorDesk.Web.Pages.Counter;

/// <summary>What the animals as typed so far will probably give in boneless meat, and how much of it goes to grind.</summary>
/// <param name="Boneless">Of the animals a ratio is published for, added up; null where there is none.</param>
/// <param name="ForGrind">The part of it that no muscle group's cut takes, zero to one.</param>
/// <param name="CutsBy">The published muscle shares by which cuts were taken off, an estimate; null where none were.</param>
/// <param name="Gaps">What could not be worked, in words.</param>
public sealed record LeanOutlook(YieldForecast? Boneless, Ratio ForGrind, Cutout? CutsBy, IReadOnlyList<string> Gaps)
{
    private static readonly Dictionary<string, string> s_published = new()
    {
        ["neck"] = "neck",
        ["shoulder"] = "shoulder",
        ["loin"] = "saddle",
        ["rib"] = "flank",
        ["haunch"] = "haunch",
    };

    public Weight? Typical => Grind(Boneless?.Typical);

    public Weight? Low => Grind(Boneless?.Low);

    public Weight? High => Grind(Boneless?.High);

    public static LeanOutlook Of(IReadOnlyList<(AnimalInput Typed, Ratio Share)> animals, IReadOnlyList<CutOrderLine> cuts)
    {
        var gaps = new List<string>();
        var forecasts = new List<YieldForecast>();
        foreach (var ((typed, share), i) in animals.Select((animal, i) => (animal, i)))
        {
            var name = animals.Count == 1 ? Wording.Of(typed.Species) : $"Animal {i + 1}, {Lower(Wording.Of(typed.Species))}";
            if (typed.State is not { } state)
                gaps.Add($"{name}: choose how it came in.");
            else if (!WeightText.Parse(typed.Weight, WeightUnit.Pound).Try(out var weight, out _) || weight.IsZero)
                gaps.Add($"{name}: no weight yet.");
            else if (Forecast(typed.Species, state, share.Times(weight)) is { } forecast)
                forecasts.Add(forecast);
            else
                gaps.Add($"{name}, {Lower(Wording.Of(state))}: no ratio to boneless meat is published, so nothing is foretold.");
        }

        var shares = animals.Select(animal => GameCutout(animal.Typed.Species)).Distinct().ToList() is [{ } one] ? one : null;
        var kept = cuts.Where(cut => cut.Cut != CutMenu.Grind).Select(cut => s_published.GetValueOrDefault(cut.Group)).ToList();
        if (kept.Count > 0 && shares is null)
            gaps.Add("No muscle shares are published for this: what goes to cuts is not taken off.");
        var forGrind = shares is null || kept.Count == 0
            ? Ratio.One
            : shares.Groups.Where(group => !kept.Contains(group.Name)).Aggregate(Ratio.Zero, (sum, group) => sum + shares.ShareOf(group));
        return new LeanOutlook(forecasts.Count == 0 ? null : Forecasting.Together(forecasts), forGrind, kept.Count > 0 ? shares : null, gaps);
    }

    /// <summary>Muscle groups by the table of the species; a table of finished retail cuts is not one of muscle groups.</summary>
    private static Cutout? GameCutout(Species species) => Cutout.For(species) is { Of: CarcassState.Hanging } cutout ? cutout : null;

    private static YieldForecast? Forecast(Species species, ArrivalState state, Weight weight)
    {
        if (state is ArrivalState.FreshBoned or ArrivalState.FrozenBoned)
            return new YieldForecast(weight, weight, weight, weight, weight, "boned meat as weighed in, before trimming", "none");
        return Forecasting.StateOf(state) is { } from ? Forecasting.Forecast(species, from, CarcassState.Boneless, weight) : null;
    }

    private Weight? Grind(Weight? boneless) => boneless is { } weight ? ForGrind.Times(weight) : null;

    private static string Lower(string words) => char.ToLowerInvariant(words[0]) + words[1..];
}
