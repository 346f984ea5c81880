using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Process;

namespace ProcessorDesk.Records;

/// <summary>What a batch's readings say of the published rules that its way of making is held to.</summary>
/// <param name="Cooking">Null where the product is not cooked.</param>
/// <param name="Chilling">Held against the published option that it comes closest to; null where nothing is heated.</param>
public sealed record ProcessVerdicts(LethalityCheck? Cooking, CoolingCheck? Chilling)
{
    public static ProcessVerdicts Of(ProcessNeeds needs, BatchLines lines) => new(
        needs.HasFlag(ProcessNeeds.Lethality) ? Lethality.Check(LethalityKind.Meat65Log, lines.Temperatures(ReadingStage.Cooking)) : null,
        needs.HasFlag(ProcessNeeds.Cooling) ? Closest(lines.Temperatures(ReadingStage.Chilling)) : null);

    /// <summary>Why the batch may not be released by its readings; empty where they meet.</summary>
    public IEnumerable<Finding> Refusals =>
        (Cooking is { Verdict: ProcessVerdict.Meets, ComeUp.Verdict: not ProcessVerdict.DoesNotMeet } or null ? [] : Cooking.Findings.Select(finding => Said("Cooking", finding)))
        .Concat(Chilling is { Verdict: ProcessVerdict.Meets } or null ? [] : Chilling.Findings.Select(finding => Said("Chilling", finding)));

    private static Finding Said(string stage, Finding finding) => finding with { Field = "", Text = $"{stage}: {finding.Text}" };

    private static CoolingCheck Closest(IReadOnlyList<ProcessReading> readings) =>
        CoolingOptions.All.Where(option => !option.OffUntilConfirmed).Select(option => Cooling.Check(option, readings)).MaxBy(check => check.Verdict)!;
}
