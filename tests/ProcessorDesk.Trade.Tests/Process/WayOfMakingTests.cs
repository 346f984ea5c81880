using ProcessorDesk.Trade.Process;
using Xunit;
using Needs = ProcessorDesk.Trade.Process.ProcessNeeds;

namespace ProcessorDesk.Trade.Tests.Process;

/// <summary>Common practice, no source; that dried product is outside the table: FSIS-GD-2021-14.</summary>
public sealed class WayOfMakingTests
{
    [Theory]
    [InlineData("fresh", Needs.FinishedWeight, Needs.FinishedWeight | Needs.CureCheck)]
    [InlineData("cured-raw", Needs.FinishedWeight | Needs.CureCheck, Needs.FinishedWeight | Needs.CureCheck)]
    [InlineData("smoked", Needs.FinishedWeight | Needs.Lethality | Needs.Cooling, Needs.FinishedWeight | Needs.Lethality | Needs.Cooling | Needs.CureCheck)]
    [InlineData("cooked", Needs.FinishedWeight | Needs.Lethality | Needs.Cooling, Needs.FinishedWeight | Needs.Lethality | Needs.Cooling | Needs.CureCheck)]
    [InlineData("fermented", Needs.FinishedWeight | Needs.Lethality | Needs.Cooling | Needs.Fermentation, Needs.FinishedWeight | Needs.Lethality | Needs.Cooling | Needs.Fermentation | Needs.CureCheck)]
    [InlineData("dried", Needs.FinishedWeight | Needs.WrittenSupport, Needs.FinishedWeight | Needs.WrittenSupport | Needs.CureCheck)]
    public void Each_way_of_making_has_its_needs_before_release(string id, Needs plain, Needs cured)
    {
        var way = WayOfMaking.All.Single(way => way.Id == id);

        Assert.Equal((plain, cured), (way.NeedsOf(cured: false), way.NeedsOf(cured: true)));
    }

    [Fact]
    public void There_are_six() => Assert.Equal(6, WayOfMaking.All.Select(way => way.Id).Distinct().Count());
}
