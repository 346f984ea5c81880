using ProcessorDesk.Web.Bench;

namespace ProcessorDesk.Web.Pages.BenchPages;

/// <summary>Figures of an answer as a person reads them.</summary>
public static class AnswerText
{
    /// <summary>To four decimals; "none" where there is none.</summary>
    public static string Of(object? value) => value switch
    {
        null => "none",
        decimal figure => PlainNumber.Print(figure),
        bool flag => flag ? "Yes" : "No",
        IEnumerable<string> texts => string.Join(' ', texts),
        _ => value.ToString() ?? "",
    };

    /// <summary>What a rule has to say, each with who says so.</summary>
    public static IEnumerable<(string Text, string Source)> Findings(Answer answer) =>
        answer.Figures.GetValueOrDefault(Figure.Findings.Name) is IEnumerable<IReadOnlyDictionary<string, object?>> findings
            ? findings.Select(finding => ((string)finding["text"]!, (string)finding["source"]!))
            : [];
}
