using System.Globalization;

namespace ProcessorDesk.Trade.Process;

/// <summary>What two weights say of how far a product has dried.</summary>
/// <param name="Loss">The part of the green weight that is gone; below zero where it gained; null where a weight is missing.</param>
/// <param name="Target">The part that has to be gone.</param>
/// <param name="Findings">What a person should know or do; none where it meets.</param>
public sealed record DryingCheck(ProcessVerdict Verdict, Ratio? Loss, Proportion Target, IReadOnlyList<Finding> Findings)
{
    /// <summary>"32.9 %"; empty where a weight is missing.</summary>
    public string LossText => Loss is { } loss ? Print(loss) : "";

    /// <summary>Cut off to the tenth, so that what falls just short does not read as the target.</summary>
    internal static string Print(Ratio loss) => ((loss * Ratio.Of(1000, 1)).Down() / 10m).ToString("0.0", CultureInfo.InvariantCulture) + " %";

    /// <summary>"meets the target", "does not meet", "not shown by the record".</summary>
    public string Words => Verdict.Words("the target");
}
