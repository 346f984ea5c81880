namespace ProcessorDesk.Trade.Process;

/// <summary>The verdicts in words.</summary>
public static class ProcessVerdictWords
{
    /// <summary>"meets the table row", "does not meet" or "not shown by the record".</summary>
    /// <param name="verdict">The verdict.</param>
    /// <param name="rule">What is met: "the table row", "the cooling option".</param>
    public static string Words(this ProcessVerdict verdict, string rule) => verdict switch
    {
        ProcessVerdict.Meets => "meets " + rule,
        ProcessVerdict.DoesNotMeet => "does not meet",
        ProcessVerdict.NotShown => "not shown by the record",
    };
}
