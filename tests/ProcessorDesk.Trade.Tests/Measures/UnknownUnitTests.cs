using System.Runtime.CompilerServices;
using ProcessorDesk.Trade.Grinding;
using ProcessorDesk.Trade.Tests.Grinding;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Measures;

/// <summary>A number that names no unit and no kind is a slip: it throws and is never taken for one that does.</summary>
public sealed class UnknownUnitTests
{
    private const WeightUnit NoUnit = 0;

    [Fact]
    public void A_unit_that_is_none_throws()
    {
        Assert.Throws<SwitchExpressionException>(() => UnitFactors.MilligramsPer(NoUnit));
        Assert.Throws<SwitchExpressionException>(() => UnitFactors.Symbol(NoUnit));
        Assert.Throws<SwitchExpressionException>(() => Weight.From(1m, NoUnit));
        Assert.Throws<SwitchExpressionException>(() => ScaleDivision.Of(NoUnit, 1m));
        Assert.Throws<SwitchExpressionException>(() => WeightText.Parse("", NoUnit));
    }

    [Fact]
    public void A_kind_of_ask_that_is_none_throws()
    {
        var ask = Grind.PlainGround with { Kind = 0 };

        Assert.Throws<SwitchExpressionException>(() => Splitting.Split(Weight.FromPounds(1m), [ask], Grind.PlainGround, ScaleDivision.HundredthPound));
    }
}
