using FsCheck.Xunit;
using ProcessorDesk.Trade.Yields;
using Xunit;
using static ProcessorDesk.Trade.Species;
using static ProcessorDesk.Trade.Yields.CarcassState;

namespace ProcessorDesk.Trade.Tests.Yields;

[Properties(MaxTest = 1000, Arbitrary = [typeof(Sizes)])]
public sealed class PublishedRatiosTests
{
    /// <summary>Every pair there is, with what 100 lb gives in hundredths of a pound.</summary>
    private static readonly (Species Species, CarcassState From, CarcassState To, decimal Of100)[] s_pairs =
    [
        (WhiteTailDeer, FieldDressed, Live, 100m * 134 / 105), (WhiteTailDeer, FieldDressed, Hanging, 75m),
        (WhiteTailDeer, FieldDressed, Boneless, 48m), (WhiteTailDeer, FieldDressed, BoneIn, 57.3m),
        (WhiteTailDeer, Hanging, Boneless, 58m), (WhiteTailDeer, Quarters, Boneless, 85m),
        (MuleDeer, FieldDressed, Live, 100m * 134 / 105), (MuleDeer, FieldDressed, Hanging, 75m),
        (MuleDeer, FieldDressed, Boneless, 48m), (MuleDeer, FieldDressed, BoneIn, 57.3m),
        (MuleDeer, Hanging, Boneless, 58m), (MuleDeer, Quarters, Boneless, 85m),
        (Elk, FieldDressed, Boneless, 43m), (Elk, FieldDressed, BoneIn, 54.2m),
        (Moose, FieldDressed, Boneless, 43m), (Moose, FieldDressed, BoneIn, 54.2m),
        (Pronghorn, FieldDressed, Live, 136m),
        (Beef, Live, Hanging, 61m), (Beef, Hanging, TakeHome, 70.5m), (Beef, Hanging, Boneless, 50m),
        (Hog, Live, Hanging, 72m), (Hog, Hanging, TakeHome, 80m),
        (Lamb, Live, Hanging, 53m), (Lamb, Hanging, BoneIn, 70m), (Lamb, Hanging, Boneless, 47m),
        (Goat, Live, Hanging, 48m), (Goat, Hanging, BoneIn, 75m), (Goat, Hanging, Boneless, 50m),
    ];

    [Fact]
    public void Every_pair_of_states_has_its_published_ratio_or_none()
    {
        foreach (var species in Enum.GetValues<Species>())
            foreach (var from in Enum.GetValues<CarcassState>())
                foreach (var to in Enum.GetValues<CarcassState>())
                {
                    var expected = s_pairs.Where(pair => (pair.Species, pair.From, pair.To) == (species, from, to)).Select(pair => (decimal?)pair.Of100).SingleOrDefault();
                    var forecast = Forecasting.Forecast(species, from, to, Weight.FromPounds(100m));
                    Assert.Equal(expected is { } pounds ? Weight.FromPounds(pounds) : null, forecast?.Typical);
                }
    }

    [Fact]
    public void Every_ratio_has_an_id_of_its_own_a_source_and_a_mark()
    {
        Assert.True(PublishedRatios.All.Count >= 26);
        Assert.Distinct(PublishedRatios.All.Select(ratio => ratio.Id));
        Assert.All(PublishedRatios.All, ratio =>
        {
            Assert.NotEmpty(ratio.Source);
            Assert.Contains(ratio.Mark, (string[])["A", "B", "C", "M", "–"]);
            Assert.Equal(ratio.Mark == "–", ratio.Source == "common practice, no source");
        });
    }

    [Fact]
    public void A_species_has_one_rule_used_unasked_between_two_states()
    {
        var unasked = PublishedRatios.All.Where(ratio => ratio.Variant.Length == 0)
            .SelectMany(ratio => ratio.Species.Select(species => (species, ratio.From, ratio.To))).ToList();

        Assert.Distinct(unasked);
        Assert.Equal(s_pairs.Length, unasked.Count);
    }

    [Fact]
    public void Variants_are_listed_beside_the_rule_used_unasked() =>
        Assert.Equal([1.36m, 1.51m], PublishedRatios.From(Pronghorn, FieldDressed).Select(ratio => ratio.Factor.ToDecimal()));

    [Fact]
    public void Every_variant_between_two_states_says_what_it_is_for()
    {
        Assert.Equal(
            [
                (Pronghorn, "pronghorn-dressed-live-female", 1.51m), (Hog, "hog-live-hanging-skinned", 0.63m),
                (Hog, "hog-hanging-takehome-lean", 0.63m), (Beef, "beef-hanging-takehome-michigan", 0.70m),
            ],
            from species in Enum.GetValues<Species>()
            from start in Enum.GetValues<CarcassState>()
            from to in Enum.GetValues<CarcassState>()
            from ratio in PublishedRatios.Variants(species, start, to)
            select (species, ratio.Id, ratio.Factor.ToDecimal()));
    }

    [Property]
    public void More_weight_never_foretells_less(Keyed keyed, Weight more)
    {
        foreach (var ratio in PublishedRatios.All)
        {
            if (ratio.Forecast(keyed.Weight) is not { } less)
                continue;
            var larger = ratio.Forecast(keyed.Weight + more)!;
            Assert.True(larger.Typical >= less.Typical);
            Assert.True(larger.Low is null || larger.Low >= less.Low);
            Assert.True(larger.High is null || larger.High >= less.High);
        }
    }

    [Property]
    public void Ranges_hold_the_typical_figure_and_the_usual_lies_in_the_extreme(Keyed keyed)
    {
        foreach (var forecast in PublishedRatios.All.Select(ratio => ratio.Forecast(keyed.Weight)).OfType<YieldForecast>())
        {
            Assert.True(forecast.Typical > Weight.Zero || keyed.Weight.Milligrams < 10);
            Assert.True(forecast.Low is null || forecast.Low <= forecast.Typical);
            Assert.True(forecast.High is null || forecast.High >= forecast.Typical);
            Assert.True(forecast.UsualLow is null || forecast.Low <= forecast.UsualLow);
            Assert.True(forecast.UsualHigh is null || forecast.High >= forecast.UsualHigh);
            Assert.True(forecast.UsualLow is null || (forecast.UsualLow <= forecast.Typical && forecast.UsualHigh >= forecast.Typical));
        }
    }

    [Fact]
    public void Nothing_weighed_forecasts_nothing() =>
        Assert.All(PublishedRatios.All, ratio => Assert.Null(ratio.Forecast(Weight.Zero)));

    [Fact]
    public void An_arrival_state_leads_to_the_state_it_was_weighed_in()
    {
        Assert.Equal(FieldDressed, Forecasting.StateOf(ArrivalState.FieldDressed));
        Assert.Equal(Hanging, Forecasting.StateOf(ArrivalState.Skinned));
        Assert.Equal(Live, Forecasting.StateOf(ArrivalState.Whole));
        Assert.Equal(Quarters, Forecasting.StateOf(ArrivalState.Quarters));
        Assert.All((ArrivalState[])[ArrivalState.FreshBoned, ArrivalState.FrozenBoned, ArrivalState.Unknown], state => Assert.Null(Forecasting.StateOf(state)));
    }
}
