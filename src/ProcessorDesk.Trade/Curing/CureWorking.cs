using System.Globalization;

namespace ProcessorDesk.Trade.Curing;

/// <summary>The arithmetic of a cure check, a line a step, as a hand would write it.</summary>
internal static class CureWorking
{
    public static List<string> Lines(IReadOnlyList<CureAmount> cures, CureBase on, CureRule rule, Ratio nitrite, Ratio nitrate)
    {
        var lines = new List<string>();
        foreach (var cure in cures)
        {
            lines.AddRange(Holds(cure, cure.Nitrite, "nitrite"));
            lines.AddRange(Holds(cure, cure.Nitrate, "nitrate"));
        }

        lines.AddRange(OnBase(nitrite, "nitrite", rule.Nitrite));
        lines.AddRange(OnBase(nitrate, "nitrate", rule.Nitrate));
        return lines;

        IEnumerable<string> OnBase(Ratio part, string agent, CureLimit limit) => part.IsZero
            ? []
            : [$"{agent} {on.Steps} = {PpmText.Print(part.PartsPerMillion, limit)}"];

        static IEnumerable<string> Holds(CureAmount cure, Proportion strength, string agent) => strength.IsZero
            ? []
            : [string.Create(CultureInfo.InvariantCulture, $"{cure.Name}: {cure.Amount.Grams:N1} g × {strength.Print()} = {cure.Amount.Grams * strength.Percent / 100m:N4} g {agent}")];
    }
}
