using ProcessorDesk.Trade.Yields;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Yields;

/// <summary>Sources: Michigan State University Extension (deer); Indiana Board of Animal Health (beef, lamb, pork).</summary>
public sealed class HangingGuidanceTests
{
    private static readonly DateOnly s_hung = new(2025, 11, 15);

    [Theory]
    [InlineData(Species.WhiteTailDeer, 0, HangingStanding.NotYet, 7)]
    [InlineData(Species.WhiteTailDeer, 2, HangingStanding.NotYet, 5)]
    [InlineData(Species.MuleDeer, 3, HangingStanding.InTime, 4)]
    [InlineData(Species.WhiteTailDeer, 5, HangingStanding.InTime, 2)]
    [InlineData(Species.WhiteTailDeer, 6, HangingStanding.CutNow, 1)]
    [InlineData(Species.WhiteTailDeer, 7, HangingStanding.CutNow, 0)]
    [InlineData(Species.WhiteTailDeer, 8, HangingStanding.TooLong, -1)]
    [InlineData(Species.Beef, 6, HangingStanding.NotYet, 4)]
    [InlineData(Species.Beef, 7, HangingStanding.InTime, 3)]
    [InlineData(Species.Lamb, 10, HangingStanding.InTime, 0)]
    [InlineData(Species.Lamb, 11, HangingStanding.TooLong, -1)]
    [InlineData(Species.Hog, 1, HangingStanding.CutNow, -1)]
    [InlineData(Species.Elk, 30, HangingStanding.NoGuidance, null)]
    public void Days_hung_are_held_against_the_guidance(Species species, int days, HangingStanding standing, int? left)
    {
        var word = HangingGuidance.For(species).Say(s_hung, s_hung.AddDays(days));

        Assert.Equal((days, standing, left), (word.Days, word.Standing, word.DaysLeft));
    }

    [Fact]
    public void The_guidance_speaks_in_words_that_say_what_to_do()
    {
        Assert.Equal("Hung 1 day; usual from day 3 to day 5.", Word(Species.WhiteTailDeer, 1));
        Assert.Equal("Hung 6 days; past the usual 3 to 5 days: cut or freeze by day 7.", Word(Species.WhiteTailDeer, 6));
        Assert.Equal("Hung 9 days; past the 7 days of the guidance: look, smell, then cut or freeze.", Word(Species.WhiteTailDeer, 9));
        Assert.Equal("Hung 12 days; no days are published for this species.", Word(Species.Bear, 12));
    }

    [Theory]
    [InlineData(Species.WhiteTailDeer, 4000, false)]
    [InlineData(Species.WhiteTailDeer, 4001, true)]
    [InlineData(Species.Beef, 3800, false)]
    [InlineData(Species.Lamb, 3801, true)]
    [InlineData(Species.Hog, 4100, false)]
    [InlineData(Species.Elk, 4101, true)]
    public void Air_too_warm_for_the_species_is_warned_about(Species species, int hundredths, bool warned)
    {
        var finding = HangingGuidance.For(species).Judge(Temperature.FromHundredthsFahrenheit(hundredths));

        Assert.Equal(warned, finding is not null);
        Assert.True(finding is null || finding.Found.EndsWith("°F", StringComparison.Ordinal));
    }

    [Fact]
    public void An_agencys_own_figure_takes_the_place_of_the_published_one() =>
        Assert.Equal(HangingStanding.TooLong, (HangingGuidance.For(Species.WhiteTailDeer) with { Longest = 5 }).Say(s_hung, s_hung.AddDays(6)).Standing);

    [Fact]
    public void A_carcass_hung_today_or_booked_for_tomorrow_has_hung_no_days()
    {
        Assert.Equal(0, HangingGuidance.DaysHung(s_hung, s_hung));
        Assert.Equal(0, HangingGuidance.DaysHung(s_hung.AddDays(1), s_hung));
    }

    private static string Word(Species species, int days) => HangingGuidance.For(species).Say(s_hung, s_hung.AddDays(days)).Text;
}
