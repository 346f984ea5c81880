namespace ProcessorDesk.Web.Bench;

/// <summary>What a calculator comes to: an answer or a refusal.</summary>
public abstract record Outcome;

/// <summary>There is no answer to what was asked.</summary>
/// <param name="Status">400 where the fields can't be taken together, 422 where the trade has no answer.</param>
/// <param name="Problems">What is wrong and what to do, by field.</param>
public sealed record Refusal(int Status, IReadOnlyDictionary<string, List<string>> Problems) : Outcome
{
    /// <summary>Can be read, but no answer is to be had: a target out of reach, no published ratio.</summary>
    public static Refusal Impossible(string field, string words) => Of(StatusCodes.Status422UnprocessableEntity, [(field, words)]);

    /// <summary>The fields do not go together.</summary>
    public static Refusal Bad(string field, string words) => Of(StatusCodes.Status400BadRequest, [(field, words)]);

    /// <summary>A rule's findings, each beside the field of ours that its own field stands for.</summary>
    public static Refusal Of(int status, IEnumerable<Finding> findings, Func<string, Field> field) =>
        Of(status, findings.Select(finding => (field(finding.Field).Name, finding.Text)));

    private static Refusal Of(int status, IEnumerable<(string Field, string Words)> problems) =>
        new(status, problems.GroupBy(problem => problem.Field, problem => problem.Words).ToDictionary(problem => problem.Key, problem => problem.ToList()));
}
