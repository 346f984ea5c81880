using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Yields;
using Xunit;

namespace ProcessorDesk.Paper.Tests.Pictures;

public sealed class WayOfWeightTests
{
    [Fact]
    public void Bars_hang_at_the_end_of_what_was_there()
    {
        var bars = WayOfWeight.Bars([Step(WayKind.Stage, 100m), Step(WayKind.Loss, 25m), Step(WayKind.Stage, 75m), Step(WayKind.Added, 15m), Step(WayKind.Loss, 10m), Step(WayKind.Stage, 80m)]);

        (double, double)[] expected = [(0, 1), (0.75, 1), (0, 0.75), (0.75, 0.9), (0.8, 0.9), (0, 0.8)];
        Assert.Equal(expected, bars.Select(bar => (Math.Round(bar.From, 6), Math.Round(bar.To, 6))));
    }

    [Fact]
    public void The_widest_point_is_one_even_where_more_was_added_than_arrived()
    {
        var bars = WayOfWeight.Bars([Step(WayKind.Stage, 40m), Step(WayKind.Added, 60m), Step(WayKind.Stage, 100m)]);

        Assert.Equal(0.4, bars[0].To, 6);
        Assert.Equal(1, bars.Max(bar => bar.To));
    }

    [Fact]
    public void A_loss_greater_than_what_was_there_stops_at_zero()
    {
        var bars = WayOfWeight.Bars([Step(WayKind.Stage, 10m), Step(WayKind.Loss, 11m)]);

        Assert.Equal((0, 1), (bars[1].From, bars[1].To));
    }

    [Fact]
    public void Nothing_weighed_gives_no_bars() => Assert.Empty(WayOfWeight.Bars([]));

    private static WayStep Step(WayKind kind, decimal pounds) => new(kind, "step", Weight.FromPounds(pounds), $"{pounds} lb");
}
