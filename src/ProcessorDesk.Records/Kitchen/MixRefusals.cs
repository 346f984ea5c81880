using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Curing;

namespace ProcessorDesk.Records;

/// <summary>Why a load may not be mixed. What is said of a second weighing stands at "Again[position]".</summary>
internal static class MixRefusals
{
    public static List<Finding> Of(RecordsContext records, Load load, MixOrder order, IReadOnlyCollection<LoadIngredient> ingredients, ScaleDivision small, bool isManager)
    {
        List<Finding> findings = [.. records.StoppingBatch(load.BatchId, HeldAct.Batch)];
        foreach (var jobId in load.Batch.Entries.Select(entry => entry.JobId).Distinct())
            findings.AddRange(records.Stopping(jobId, HeldAct.Batch));
        if (order.Fat.IsZero && load.AddedFat.IsPositive)
            findings.Add(new Finding("Fat", $"Type what was weighed in of {load.Batch.FormulaVersion.AddedFat ?? "the added fat"}."));
        var block = load.Drawn + order.Fat;
        var (check, again) = (load.CureOf(block, ingredients), load.CureAgain(block, ingredients));
        findings.AddRange(OfCure(load, order, check, again, isManager));
        if (check is not { Meets: false })
            findings.AddRange(OfSecondWeighing(ingredients, again, small));
        return findings;
    }

    private static IEnumerable<Finding> OfCure(Load load, MixOrder order, CureCheck? check, CureCheck? again, bool isManager)
    {
        var low = check is { BelowMinimum: true } ? check : again is { Meets: true, BelowMinimum: true } ? again : null;
        if (check is { Meets: false })
            return check.Findings;
        if (check is not null && load.Batch.Product.Cured && !IsCured(load, order))
            return [new Finding("Cure", "There is no cure in this mix but what cured meat brings along. Weigh the cure in.", "", "", CureLimits.ComminutedNitrite.Source)];
        if (low is not null && string.IsNullOrWhiteSpace(order.LowCureBecause))
            return low.Findings.Select(finding => finding with { Text = finding.Text + " Weigh more cure in, or let the manager give a reason." });
        return low is not null && !isManager
            ? [new Finding("LowCureBecause", "Only the manager accepts less cure than the minimum. Weigh more cure in, or fetch the manager.")]
            : [];
    }

    private static IEnumerable<Finding> OfSecondWeighing(IEnumerable<LoadIngredient> ingredients, CureCheck? byAgain, ScaleDivision small)
    {
        foreach (var line in ingredients.Where(line => line.Cures && line.Weighed.IsPositive))
        {
            var field = FormattableString.Invariant($"Again[{line.Position}]");
            if (line.WeighedAgain is not { } again)
                yield return new Finding(field, $"Set the scale to zero, weigh the {line.Name.ToLowerInvariant()} a second time, and type what it shows.");
            else if (!SecondWeighing.Agree(line.Weighed, again, small))
                yield return new Finding(
                    field, $"First {small.Print(line.Weighed)}, now {small.Print(again)}: more than {small.Print(SecondWeighing.MostApart(small))} apart. Set the scale to zero and weigh it both times anew.",
                    small.Print(again), small.Print(line.Weighed));
            else if (byAgain is { Meets: false })
                yield return byAgain.Findings[0] with { Field = field, Text = $"By the second weighing: {byAgain.Findings[0].Text}" };
        }
    }

    /// <summary>Something that cures was weighed in; bacon ends and other meat that was cured before do not count.</summary>
    private static bool IsCured(Load load, MixOrder order) =>
        load.Batch.FormulaVersion.Ingredients.Any(line => line.Cures && order.Ingredients.TryGetValue(line.Position, out var typed) && typed.Weighed.IsPositive);
}
