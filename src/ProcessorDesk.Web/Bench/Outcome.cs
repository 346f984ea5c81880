namespace ProcessorDesk.Web.Bench;

/// <summary>What a calculator comes to: an answer or a refusal.</summary>
public abstract record Outcome;

/// <summary>There is no answer to what was asked.</summary>
/// <param name="Status">400 where the fields contradict each other, 422 where the trade has no answer.</param>
/// <param name="Field">The field it belongs to.</param>
/// <param name="Words">What is wrong and what to do.</param>
public sealed record Refusal(int Status, string Field, string Words) : Outcome
{
    /// <summary>Can be read, but no answer is to be had: a target out of reach, no published ratio.</summary>
    public static Refusal Impossible(string field, string words) => new(StatusCodes.Status422UnprocessableEntity, field, words);

    /// <summary>The fields do not go together.</summary>
    public static Refusal Bad(string field, string words) => new(StatusCodes.Status400BadRequest, field, words);
}
