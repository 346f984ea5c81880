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

    /// <param name="left">Milligrams of the agent that may still go in.</param>
    /// <param name="already">Milligrams of it that are in.</param>
    public static List<string> Most(CureBase on, CureLimit limit, Ratio left, Ratio already, Proportion strength, Weight amount, ScaleDivision small)
    {
        var agent = CureFindings.Name(limit.Agent);
        List<string> lines = [$"{PpmText.Print(limit)} {on.StepsBack} = {Grams(left + already)} {agent}"];
        if (!already.IsZero)
            lines.Add($"less {Grams(already)} that is in already = {Grams(left)}");
        lines.Add($"{Grams(left)} ÷ {strength.Print()} = {Grams(left / strength.ToRatio())}");
        lines.Add($"down to the scale of {small}: {small.Print(amount)}");
        return lines;
    }

    private static string Grams(Ratio milligrams) => (milligrams / Ratio.Of(1000, 1)).ToDecimal().ToString("N4", CultureInfo.InvariantCulture) + " g";
}
