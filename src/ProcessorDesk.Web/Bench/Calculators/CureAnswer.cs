using ProcessorDesk.Trade.Curing;

namespace ProcessorDesk.Web.Bench.Calculators;

/// <summary>What is answered of a cure.</summary>
internal static class CureAnswer
{
    /// <summary>Of a dose.</summary>
    public static Answer Of(CureCheck check, MostCure most) => new([.. check.Working, Step(most)])
    {
        Headline = check switch
        {
            { Meets: false } => "Does not meet: do not use it so",
            { BelowMinimum: true } => "Within the limits, and below the minimum",
            _ => "Meets the limits",
        },
        Tone = check switch { { Meets: false } => "stop", { BelowMinimum: true } => "warn", _ => "good" },
        Published = [.. Limits(check.Rule), .. check.Notes.Select(note => (note.Text, note.Source))],
        Figures =
        {
            ["nitritePpm"] = check.NitritePpm,
            ["nitratePpm"] = check.NitratePpm,
            ["nitriteLimitPpm"] = check.Rule.Nitrite.PartsPerMillion,
            ["nitrateLimitPpm"] = check.Rule.NitrateAllowed?.PartsPerMillion,
            ["meets"] = check.Meets,
            ["belowMinimum"] = check.BelowMinimum,
            ["maxCureG"] = most.Amount.Grams,
            ["findings"] = Answer.Rows(check.Findings),
            ["source"] = check.Rule.Source,
        },
    };

    /// <summary>Where no dose was given.</summary>
    public static Answer OfMost(CureRule rule, MostCure most) => new([Step(most)])
    {
        Published = [.. Limits(rule)],
        Figures =
        {
            ["nitritePpm"] = null,
            ["nitratePpm"] = null,
            ["nitriteLimitPpm"] = null,
            ["nitrateLimitPpm"] = null,
            ["meets"] = null,
            ["belowMinimum"] = null,
            ["maxCureG"] = most.Amount.Grams,
            ["findings"] = Answer.Rows([]),
            ["source"] = rule.Source,
        },
    };

    private static string Step(MostCure most) => $"The most of this cure that meets: {PlainNumber.Print(most.Amount.Grams)} g. {most.Why}";

    private static IEnumerable<(string, string)> Limits(CureRule rule) =>
        new[] { rule.Nitrite, rule.Nitrate, rule.Least, rule.PrescribedAccelerator }.OfType<CureLimit>().Distinct().Select(limit => (Words(limit), limit.Source));

    private static string Words(CureLimit limit)
    {
        var agent = limit.Agent switch
        {
            CureAgent.Nitrite => "Nitrite",
            CureAgent.Nitrate => "Nitrate",
            CureAgent.Accelerator => "Accelerator",
        };
        return limit.Bound switch
        {
            CureBound.AtMost when limit.Figure.IsZero => $"{agent}: none",
            CureBound.AtMost => $"{agent} at most {PpmText.Print(limit)} ({limit.AsPrinted})",
            CureBound.AtLeast => $"{agent} at least {PpmText.Print(limit)}: {limit.What}",
            CureBound.Prescribed => $"{agent} at {limit.AsPrinted}: {limit.What}",
            CureBound.Note => $"{agent} {PpmText.Print(limit)}: {limit.What}",
        };
    }
}
