using ProcessorDesk.Trade.Curing;

namespace ProcessorDesk.Trade.Tests.Curing;

/// <summary>The small cast of the cure's tests.</summary>
internal static class Cure
{
    public static readonly Proportion Pink = Proportion.FromPercent(6.25m);

    public static CureAmount Of(Weight amount, decimal nitrite = 6.25m, decimal nitrate = 0m) =>
        new("Pink cure", amount, Proportion.FromPercent(nitrite), Proportion.FromPercent(nitrate));

    public static CureCheck Check(Weight meatBlock, params CureAmount[] cures) => ComminutedCure.Check(meatBlock, cures);

    public static decimal Figure(string figure) => decimal.Parse(figure, System.Globalization.CultureInfo.InvariantCulture);
}
