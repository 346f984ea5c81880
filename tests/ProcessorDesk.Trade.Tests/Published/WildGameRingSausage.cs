using Xunit;
using static ProcessorDesk.Trade.Tests.Curing.Cure;

namespace ProcessorDesk.Trade.Tests.Published;

/// <summary>Source: a published wild-game ring sausage with 2 oz of "cure" on 45 lb; its strength, 6.25 %, is arithmetic and not stated there.</summary>
public sealed class WildGameRingSausage
{
    [Fact]
    public void That_a_formula_was_published_does_not_make_it_meet()
    {
        var check = Check(Weight.FromPounds(45m), Of(Weight.FromOunces(2m)));

        Assert.Equal(173.61m, decimal.Round(2m * 0.0625m / (45m * 16m) * 1_000_000m, 2));
        Assert.Equal(173.61m, decimal.Round(check.NitritePpm, 2));
        Assert.False(check.Meets);
    }
}
