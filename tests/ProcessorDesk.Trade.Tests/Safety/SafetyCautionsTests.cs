using ProcessorDesk.Trade.Safety;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Safety;

/// <summary>Which animals each caution goes for: MSU Extension 2022 (deer family), Wisconsin DNR (shot game), Missouri MDC (bear, boar).</summary>
public sealed class SafetyCautionsTests
{
    [Theory]
    [InlineData(Species.WhiteTailDeer, "game.cwd, game.lead")]
    [InlineData(Species.MuleDeer, "game.cwd, game.lead")]
    [InlineData(Species.Elk, "game.cwd, game.lead")]
    [InlineData(Species.Moose, "game.cwd, game.lead")]
    [InlineData(Species.Pronghorn, "game.lead")]
    [InlineData(Species.Bear, "game.lead, game.trichinae")]
    [InlineData(Species.WildBoar, "game.lead, game.trichinae")]
    [InlineData(Species.Hog, "")]
    [InlineData(Species.Beef, "")]
    [InlineData(Species.Bison, "")]
    [InlineData(Species.Lamb, "")]
    [InlineData(Species.Goat, "")]
    public void Each_animal_brings_its_own_cautions(Species species, string ids) =>
        Assert.Equal(ids, string.Join(", ", SafetyCautions.For([species]).Select(caution => caution.Id)));

    [Fact]
    public void Several_animals_bring_each_caution_once() =>
        Assert.Equal(SafetyCautions.All, SafetyCautions.For([Species.Elk, Species.Bear, Species.Elk]));

    [Fact]
    public void Every_caution_names_who_published_it() =>
        Assert.All(SafetyCautions.All, caution => Assert.NotEmpty(caution.Source));
}
