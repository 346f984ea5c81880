using ProcessorDesk.Trade.Deadlines;
using Xunit;
using static ProcessorDesk.Trade.Deadlines.RetentionRule;

namespace ProcessorDesk.Trade.Tests.Published;

/// <summary>
/// Sources: 9 CFR 320.3 (two years after 31 December of the year of the transaction); Texas, custom processing (two years from
/// processing); South Dakota, game (one year from receipt); Colorado (one year after release).
/// </summary>
public sealed class RecordsRetentionRules
{
    private static readonly JobDays s_day = JobDays.AllOn(new DateOnly(2025, 11, 15));

    [Fact]
    public void Federal_from_15_November_2025_is_the_end_of_2027() =>
        Assert.Equal(new DateOnly(2027, 12, 31), Retention.Of([Federal], s_day).Until);

    [Fact]
    public void With_Texas_beside_it_the_later_federal_day_holds()
    {
        var both = Retention.Of([TexasCustom, Federal], s_day);

        Assert.Equal((new DateOnly(2027, 12, 31), Federal), (both.Until!.Value, both.Rule));
        Assert.Equal([new DateOnly(2027, 11, 15), new DateOnly(2027, 12, 31)], both.Each.Select(each => each.Until!.Value));
    }

    [Fact]
    public void South_Dakota_game_alone_is_a_year_from_receipt() =>
        Assert.Equal(new DateOnly(2026, 11, 15), Retention.Of([SouthDakotaGame], s_day).Until);

    [Fact]
    public void Colorado_is_a_year_from_release() =>
        Assert.Equal(new DateOnly(2026, 12, 20), Retention.Of([Colorado], s_day with { HandedOver = new DateOnly(2025, 12, 20) }).Until);
}
