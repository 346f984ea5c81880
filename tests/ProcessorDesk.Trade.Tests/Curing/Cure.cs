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

    public static KeyedWeight Pounds(decimal pounds) => KeyedWeight.Of(pounds, WeightUnit.Pound);

    public static KeyedWeight Grams(decimal grams) => KeyedWeight.Of(grams, WeightUnit.Gram);

    public static CureAmount PureNitrite(decimal pounds) => CureAmount.Of("Sodium nitrite", pounds, WeightUnit.Pound, Proportion.Whole, Proportion.Zero);

    public static CureQuestion Pickled(CureMethod method, decimal picklePounds, decimal pump, params CureAmount[] cures) =>
        new(method, cures) { Pickle = Pounds(picklePounds), Pump = Proportion.FromPercent(pump) };

    public static (decimal NitritePpm, bool Meets) Answer(CureQuestion question)
    {
        var check = IngoingCure.Check(question);
        return (check.NitritePpm, check.Meets);
    }
}
