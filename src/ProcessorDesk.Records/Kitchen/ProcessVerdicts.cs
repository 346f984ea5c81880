using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Process;

namespace ProcessorDesk.Records;

/// <summary>What a batch's readings and weights say of the published rules, and of the shop's own, that its way of making is held to.</summary>
/// <param name="Cooking">Null where the product is not cooked.</param>
/// <param name="Chilling">Held against the shop's option, or against the published one it comes closest to; null where nothing is heated.</param>
/// <param name="Fermenting">Null where the product is not fermented.</param>
/// <param name="Drying">Null where no loss is asked for.</param>
public sealed record ProcessVerdicts(LethalityCheck? Cooking, CoolingCheck? Chilling, FermentationCheck? Fermenting, DryingCheck? Drying)
{
    /// <param name="balance">Of the batch: drying is held against it.</param>
    public static ProcessVerdicts Of(ProcessNeeds needs, BatchRules rules, BatchLines lines, BatchBalance balance) => new(
        needs.HasFlag(ProcessNeeds.Lethality) ? Lethality.Check(rules.Cooking, lines.Temperatures(ReadingStage.Cooking), rules.Accuracy, rules.CookingGap) : null,
        needs.HasFlag(ProcessNeeds.Cooling) ? Cooled(rules, lines.Temperatures(ReadingStage.Chilling)) : null,
        needs.HasFlag(ProcessNeeds.Fermentation) ? Fermentation.Check(lines.Temperatures(ReadingStage.Fermenting), lines.Acidities) : null,
        rules.DryingLoss is { } target ? Trade.Process.Drying.Check(balance.WentOn.IsPositive ? balance.WentOn : null, balance.Finished, target) : null);

    /// <summary>
    /// Why the batch may not be released by its readings; empty where they meet, or where a letter or a rework answers for what does not.
    /// Weight that is not lost yet is not answered for: it is dried on.
    /// </summary>
    public IReadOnlyList<Finding> Refusals(BatchLines lines, IReadOnlyList<DispositionLine> dispositions) =>
    [
        .. Open(ReadingStage.Fermenting) && dispositions.AnswerFor(ReadingStage.Fermenting, lines) is null ? Said("Fermenting", Fermenting!.Findings) : [],
        .. Open(ReadingStage.Cooking) && dispositions.AnswerFor(ReadingStage.Cooking, lines) is null ? Said("Cooking", Cooking!.Findings) : [],
        .. Open(ReadingStage.Chilling) && dispositions.AnswerFor(ReadingStage.Chilling, lines) is null ? Said("Chilling", Chilling!.Findings) : [],
        .. Drying is { Verdict: not ProcessVerdict.Meets } ? Said("Drying", Drying.Findings) : [],
    ];

    /// <summary>That part of the record keeps the batch from its release, were there no letter.</summary>
    public bool Open(ReadingStage stage) => stage switch
    {
        ReadingStage.Cooking => Cooking is { WithComeUp: not ProcessVerdict.Meets },
        ReadingStage.Chilling => Chilling is { Verdict: not ProcessVerdict.Meets },
        ReadingStage.Fermenting => Fermenting is { Verdict: not ProcessVerdict.Meets },
    };

    private static IEnumerable<Finding> Said(string stage, IEnumerable<Finding> findings) =>
        findings.Select(finding => finding with { Field = "", Text = $"{stage}: {finding.Text}" });

    private static CoolingCheck Cooled(BatchRules rules, IReadOnlyList<ProcessReading> readings) =>
        CoolingOptions.All.Where(option => rules.CoolingOption is { } own ? option.Id == own : !option.OffUntilConfirmed)
            .Select(option => Cooling.Check(option, readings, rules.ChillingGap)).MaxBy(check => check.Verdict)!;
}
