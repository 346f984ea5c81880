using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Process;

namespace ProcessorDesk.Records;

/// <summary>What a batch's readings say of the published rules that its way of making is held to.</summary>
/// <param name="Cooking">Null where the product is not cooked.</param>
/// <param name="Chilling">Held against the published option that it comes closest to; null where nothing is heated.</param>
/// <param name="Fermenting">Null where the product is not fermented.</param>
public sealed record ProcessVerdicts(LethalityCheck? Cooking, CoolingCheck? Chilling, FermentationCheck? Fermenting)
{
    public static ProcessVerdicts Of(ProcessNeeds needs, BatchLines lines) => new(
        needs.HasFlag(ProcessNeeds.Lethality) ? Lethality.Check(LethalityKind.Meat65Log, lines.Temperatures(ReadingStage.Cooking)) : null,
        needs.HasFlag(ProcessNeeds.Cooling) ? Closest(lines.Temperatures(ReadingStage.Chilling)) : null,
        needs.HasFlag(ProcessNeeds.Fermentation) ? Fermentation.Check(lines.Temperatures(ReadingStage.Fermenting), lines.Acidities) : null);

    /// <summary>Why the batch may not be released by its readings; empty where they meet.</summary>
    public IReadOnlyList<Finding> Refusals =>
    [
        .. Fermenting is { Verdict: not ProcessVerdict.Meets } ? Said("Fermenting", Fermenting.Findings) : [],
        .. Cooking is { Verdict: not ProcessVerdict.Meets } or { ComeUp.Verdict: ProcessVerdict.DoesNotMeet } ? Said("Cooking", Cooking.Findings) : [],
        .. Chilling is { Verdict: not ProcessVerdict.Meets } ? Said("Chilling", Chilling.Findings) : [],
    ];

    private static IEnumerable<Finding> Said(string stage, IEnumerable<Finding> findings) =>
        findings.Select(finding => finding with { Field = "", Text = $"{stage}: {finding.Text}" });

    private static CoolingCheck Closest(IReadOnlyList<ProcessReading> readings) =>
        CoolingOptions.All.Where(option => !option.OffUntilConfirmed).Select(option => Cooling.Check(option, readings)).MaxBy(check => check.Verdict)!;
}
