using System.Globalization;

namespace ProcessorDesk.Trade.Curing;

/// <summary>The arithmetic of a cure check, a line a step, as a hand would write it.</summary>
internal static class CureWorking
{
    public static List<string> Lines(Weight meatBlock, IReadOnlyList<CureAmount> cures, Ratio nitrite, Ratio nitrate)
    {
        var lines = new List<string>();
        foreach (var cure in cures)
        {
            lines.AddRange(Holds(cure, cure.Nitrite, "nitrite"));
            lines.AddRange(Holds(cure, cure.Nitrate, "nitrate"));
        }

        lines.AddRange(OnBlock(nitrite, "nitrite", CureLimits.ComminutedNitrite));
        lines.AddRange(OnBlock(nitrate, "nitrate", CureLimits.ComminutedNitrate));
        return lines;

        IEnumerable<string> OnBlock(Ratio part, string agent, CureLimit limit) => part.IsZero
            ? []
            : [string.Create(CultureInfo.InvariantCulture, $"{agent} ÷ {meatBlock.Grams:N1} g of meat block = {PpmText.Print(part.PartsPerMillion, limit)}")];

        static IEnumerable<string> Holds(CureAmount cure, Proportion strength, string agent) => strength.IsZero
            ? []
            : [string.Create(CultureInfo.InvariantCulture, $"{cure.Name}: {cure.Amount.Grams:N1} g × {strength.Print()} = {cure.Amount.Grams * strength.Percent / 100m:N4} g {agent}")];
    }
}
