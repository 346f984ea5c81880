namespace ProcessorDesk.Web.Bench;

/// <summary>What a calculator found.</summary>
/// <param name="Steps">The arithmetic, a line a step, as a shop hand would write it.</param>
public sealed record Answer(IReadOnlyList<string> Steps) : Outcome
{
    /// <summary>By name, all that the calculator lists: a decimal, text, true or false, sentences, or rows of the same; null where there is none.</summary>
    public Dictionary<string, object?> Figures { get; } = [];

    /// <summary>Published limits and ranges the answer is held against, with their source.</summary>
    public IReadOnlyList<(string Words, string Source)> Published { get; init; } = [];

    /// <summary>The verdict in words; empty where nothing is judged.</summary>
    public string Headline { get; init; } = "";

    /// <summary>How the verdict looks: "good", "stop" or "warn".</summary>
    public string Tone { get; init; } = "";

    /// <summary>The rows of <see cref="Figure.Findings"/>.</summary>
    public static IReadOnlyList<Dictionary<string, object?>> Rows(IEnumerable<Finding> findings) =>
    [
        .. findings.Select(finding => new Dictionary<string, object?>
        {
            ["field"] = finding.Field, ["text"] = finding.Text, ["found"] = finding.Found, ["allowed"] = finding.Allowed, ["source"] = finding.Source,
        }),
    ];
}
