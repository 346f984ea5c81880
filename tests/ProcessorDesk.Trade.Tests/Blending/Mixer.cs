using ProcessorDesk.Trade.Blending;

namespace ProcessorDesk.Trade.Tests.Blending;

/// <summary>Short words for the tests of blends: percents and pounds as decimals, prices in cents.</summary>
internal static class Mixer
{
    public static Proportion Percent(decimal percent) => Proportion.FromPercent(percent);

    public static BlendMaterial Meat(
        string name, decimal fat, int cents, decimal least = 0m, decimal most = 100m, decimal? onHand = null) =>
        new(name, Percent(fat), PricePerPound.FromCents(cents), Percent(least), Percent(most), onHand is { } pounds ? Weight.FromPounds(pounds) : null);

    public static BlendWanted Block(decimal pounds, decimal fatLeast, decimal fatMost, params BlendMaterial[] materials) =>
        new(Weight.FromPounds(pounds), ScaleDivision.HundredthPound, new FatBand(Percent(fatLeast), Percent(fatMost)), materials);

    public static decimal[] Pounds(this LeastCostAnswer answer) =>
        [.. answer.Blend!.Parts.Select(part => ScaleDivision.HundredthPound.Figure(part.Weight))];
}
