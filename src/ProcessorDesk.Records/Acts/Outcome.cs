using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>What became of a verb: done, with where its result is; or refused, with findings and nothing saved.</summary>
public sealed class Outcome
{
    private Outcome(string result, IReadOnlyList<Finding> findings, bool isStale, bool isRepeat) =>
        (Result, Findings, IsStale, IsRepeat) = (result, findings, isStale, isRepeat);

    /// <summary>What the verb gave, such as a job's id; kept with the form key.</summary>
    public string Result { get; }

    public IReadOnlyList<Finding> Findings { get; }

    public bool IsDone => Findings.Count == 0;

    /// <summary>Somebody saved the thing since the form was shown.</summary>
    public bool IsStale { get; }

    /// <summary>This form was saved before; the result is that of the first time.</summary>
    public bool IsRepeat { get; }

    public static Outcome Done(string result = "") => new(result, [], false, false);

    public static Outcome Done(int id) => Done(id.ToString(System.Globalization.CultureInfo.InvariantCulture));

    public static Outcome Refused(params IEnumerable<Finding> findings) => new("", [.. findings], false, false);

    public static Outcome Stale() =>
        new("", [new Finding("", "Somebody else changed this while you had it open. Look at both, then choose which to keep.")], true, false);

    internal static Outcome Repeat(string result) => new(result, [], false, true);
}
