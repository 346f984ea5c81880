using ProcessorDesk.Trade.Curing;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Published;

/// <summary>Source: 9 CFR 424.21(c) and 424.22(b), text of the 2015 edition. An ounce to 100 lb is 1/1600 = 625 ppm.</summary>
public sealed class CodeOfFederalRegulations424
{
    [Theory]
    [InlineData("comminuted.nitrite", "0.25", "156.25")]
    [InlineData("comminuted.nitrate", "2.75", "1718.75")]
    [InlineData("dry.nitrite", "1", "625")]
    [InlineData("dry.nitrate", "3.5", "2187.5")]
    [InlineData("accelerator.acid", "0.75", "468.75")]
    [InlineData("accelerator.salt", "0.875", "546.875")]
    public void Ounces_to_100_lb_are_held_as_a_ratio(string id, string ounces, string partsPerMillion)
    {
        Assert.Equal(Figure(partsPerMillion), Figure(ounces) / (100m * 16m) * 1_000_000m);
        Assert.Equal(Figure(partsPerMillion), CureLimits.Find(id).PartsPerMillion);
    }

    [Fact]
    public void The_comminuted_limits_are_1_6400_and_11_6400()
    {
        Assert.Equal(Ratio.Of(1, 6400), CureLimits.ComminutedNitrite.Figure);
        Assert.Equal(Ratio.Of(11, 6400), CureLimits.ComminutedNitrate.Figure);
    }

    [Theory]
    [InlineData("pickle.nitrite", "2")]
    [InlineData("pickle.nitrate", "7")]
    public void Pounds_to_100_gallons_are_on_a_pickle_of_10_lb_a_gallon_pumped_to_a_tenth(string id, string pounds)
    {
        Assert.Equal(Figure(pounds) * 0.10m / (100m * 10m) * 1_000_000m, CureLimits.Find(id).PartsPerMillion);
    }

    [Theory]
    [InlineData("bacon.pumped.nitrite.sodium", 120, CureBound.Prescribed)]
    [InlineData("bacon.pumped.nitrite.potassium", 148, CureBound.Prescribed)]
    [InlineData("bacon.pumped.accelerator", 550, CureBound.Prescribed)]
    [InlineData("bacon.pumped.nitrate", 0, CureBound.AtMost)]
    [InlineData("bacon.immersion.nitrite.sodium", 120, CureBound.AtMost)]
    [InlineData("bacon.immersion.nitrite.potassium", 148, CureBound.AtMost)]
    [InlineData("bacon.immersion.nitrate", 0, CureBound.AtMost)]
    [InlineData("bacon.dry.nitrite.sodium", 200, CureBound.AtMost)]
    [InlineData("bacon.dry.nitrite.potassium", 246, CureBound.AtMost)]
    [InlineData("bacon.dry.nitrate", 0, CureBound.AtMost)]
    [InlineData("finished.nitrite", 200, CureBound.AtMost)]
    public void Figures_printed_in_ppm_stand_as_printed(string id, int partsPerMillion, CureBound bound)
    {
        var limit = CureLimits.Find(id);

        Assert.Equal((partsPerMillion, bound), (limit.PartsPerMillion, limit.Bound));
    }

    /// <summary>Sources: FSIS Directive 7620.3 as transcribed; 21 CFR 172.170.</summary>
    [Theory]
    [InlineData("keep-refrigerated.nitrite.least", 120, CureBound.AtLeast)]
    [InlineData("preserving.nitrite.effect", 40, CureBound.Note)]
    [InlineData("home-cure.nitrite", 200, CureBound.Note)]
    [InlineData("home-cure.nitrate", 500, CureBound.Note)]
    public void Figures_from_elsewhere_stand_beside_them(string id, int partsPerMillion, CureBound bound) =>
        Figures_printed_in_ppm_stand_as_printed(id, partsPerMillion, bound);

    [Fact]
    public void Every_figure_has_an_id_of_its_own_a_source_and_a_mark()
    {
        Assert.Equal(CureLimits.All.Count, CureLimits.All.Select(limit => limit.Id).Distinct().Count());
        Assert.All(CureLimits.All, limit => Assert.Contains("CFR", limit.Mark == 'A' ? limit.Source : "CFR", StringComparison.Ordinal));
        Assert.All(CureLimits.All, limit => Assert.Contains(limit.Mark, "AB"));
        Assert.Throws<ArgumentException>(() => CureLimits.Find("comminuted"));
    }

    private static decimal Figure(string figure) => decimal.Parse(figure, System.Globalization.CultureInfo.InvariantCulture);
}
