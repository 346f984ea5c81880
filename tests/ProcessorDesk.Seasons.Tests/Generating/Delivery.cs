using ProcessorDesk.Trade;

namespace ProcessorDesk.Seasons.Tests.Generating;

/// <summary>What comes through the door together: animals of a kind, and the shares of those whose jobs they are.</summary>
internal sealed record Delivery(Stock Stock, int Animals, params Ratio[] Shares)
{
    private static readonly Ratio s_half = Ratio.Of(1, 2);
    private static readonly Ratio s_quarter = Ratio.Of(1, 4);

    public static Delivery OneDeer { get; } = new(Stock.Deer, 1, Ratio.One);

    public static Delivery Next(Dice dice) => dice.Between(1, 100) switch
    {
        <= 80 => OneDeer,
        <= 90 => new(Stock.Deer, 2, Ratio.One),
        <= 93 => new(Stock.Elk, 1, Ratio.One),
        <= 95 => new(Stock.Lamb, 1, Ratio.One),
        <= 98 => new(Stock.Hog, 1, s_half, s_half),
        _ => new(Stock.Beef, 1, s_half, s_quarter, s_quarter),
    };
}
