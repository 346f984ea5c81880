namespace ProcessorDesk.Trade.Blending;

/// <summary>An exact part as a percent to 0.0001 %, rounded to the side that does not make a bound look kept that is broken.</summary>
internal static class PercentWords
{
    private static readonly Ratio Million = Ratio.Of(1_000_000, 1);

    public static string Down(Ratio part) => Print((part * Million).Down());

    public static string Up(Ratio part) => Print(-(-part * Million).Down());

    private static string Print(long partsPerMillion) => Proportion.FromPartsPerMillion(checked((int)partsPerMillion)).Print();
}
