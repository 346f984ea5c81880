using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Curing;

namespace ProcessorDesk.Records;

/// <summary>A load as it is mixed.</summary>
/// <param name="Fat">Added fat as weighed; zero where none goes in.</param>
/// <param name="Ingredients">What was weighed of each line of the formula, by its position.</param>
/// <param name="LowCureBecause">The manager's reason for less cure than product kept cold should have.</param>
/// <param name="AlreadyInBecause">It is mixed already although it should not be: how that came about. Null asks whether it may.</param>
public sealed record MixOrder(
    int LoadId, Weight Fat, IReadOnlyDictionary<int, (Weight Weighed, WeightUnit KeyedIn)> Ingredients, string? LowCureBecause = null, string? AlreadyInBecause = null);

/// <summary>Mixing a load on what was weighed.</summary>
public static class Mixing
{
    /// <summary>
    /// The cure is checked on the meat and the cure as weighed. Over the limit, or with none where the product is cured, the load does not
    /// start and nobody overrides it; under the minimum it needs the manager's reason. Said to be mixed already, it is booked and the
    /// batch put on hold.
    /// </summary>
    /// <param name="isManager">The hand may accept less cure than the minimum.</param>
    public static Outcome MixLoad(this RecordsContext records, MixOrder order, bool isManager, Act act)
    {
        var load = records.Loads
            .Include(one => one.Batch).ThenInclude(batch => batch.Product)
            .Include(one => one.Batch).ThenInclude(batch => batch.FormulaVersion).ThenInclude(formula => formula.Ingredients)
            .Include(one => one.Batch).ThenInclude(batch => batch.Loads)
            .Include(one => one.Batch).ThenInclude(batch => batch.Entries)
            .Include(one => one.Draws)
            .AsSplitQuery()
            .Single(one => one.Id == order.LoadId);
        if (BatchRecord.Over(load.Batch) is { } over)
            return Outcome.Refused(over);
        if (load.MixedAt is not null)
            return Outcome.Refused(new Finding("", $"Load {load.Number} is mixed already."));
        if (load.Batch.MixedAt is not null)
            return Outcome.Refused(new Finding("", $"The mixing of batch {load.Batch.Number} was finished without load {load.Number}."));
        if (!load.Drawn.IsPositive)
            return Outcome.Refused(new Finding("", "No meat is drawn into this load yet. Draw the lugs first."));

        var block = load.Drawn + order.Fat;
        var ingredients = Weighed(records, load, block, order);
        var check = load.CureOf(block, ingredients);
        if (order.AlreadyInBecause is { } because)
        {
            if (string.IsNullOrWhiteSpace(because))
                return Outcome.Refused(new Finding("AlreadyInBecause", "Say how it came to be mixed."));
            records.Holds.Add(Hold.OnBatch(load.BatchId, HoldReason.WrongMeatIn, $"Load {load.Number}: {because.Trim()}", act.Now, act.Hand.Id));
        }
        else if (Refusals(records, load, order, check, isManager) is { Count: > 0 } findings)
        {
            return Outcome.Refused(findings);
        }

        load.Mix(order.Fat, ingredients, check is { BelowMinimum: true } ? order.LowCureBecause : null, order.AlreadyInBecause, act.Now, act.Hand.Id);
        if (load.Batch.Loads.All(one => one.MixedAt is not null))
            AllMixed(records, load.Batch, act);
        return Outcome.Done(load.BatchId);
    }

    /// <summary>All the meat went into fewer loads than were planned: those without any are not made.</summary>
    public static Outcome FinishMixing(this RecordsContext records, int batchId, Act act)
    {
        var batch = records.Batches.Include(one => one.FormulaVersion).Include(one => one.Loads).ThenInclude(load => load.Draws).Single(one => one.Id == batchId);
        if (BatchRecord.Over(batch) is { } over)
            return Outcome.Refused(over);
        if (batch.MixedAt is not null)
            return Outcome.Refused(new Finding("", "The mixing is finished already."));
        if (batch.Loads.All(load => load.MixedAt is null))
            return Outcome.Refused(new Finding("", "No load is mixed yet. Mix one first, or take the batch off the plan."));
        if (batch.Loads.FirstOrDefault(load => load.MixedAt is null && load.Drawn.IsPositive) is { } drawn)
            return Outcome.Refused(new Finding("", $"Meat is drawn into load {drawn.Number}. Mix it, or strike out what was drawn."));
        AllMixed(records, batch, act);
        return Outcome.Done(batchId);
    }

    /// <summary>
    /// The check on what is weighed; null where the product is not cured and nothing in it holds cure. Product and batch must have been
    /// loaded.
    /// </summary>
    public static CureCheck? CureOf(this Load load, Weight block, IReadOnlyCollection<LoadIngredient> ingredients) =>
        load.Batch.Product.Cured || ingredients.Any(line => line.HoldsCure)
            ? ComminutedCure.Check(block, [.. ingredients.Where(line => line.HoldsCure).Select(line => line.ToCure())])
            : null;

    private static void AllMixed(RecordsContext records, Batch batch, Act act)
    {
        batch.Mixed(act.Now);
        if (batch.FormulaVersion.RestMinutes > 0)
            records.BatchSteps.Add(new BatchStep(batch.Id, BatchStepKind.RestStarted, act.Now, act.Hand.Id));
    }

    private static List<LoadIngredient> Weighed(RecordsContext records, Load load, Weight block, MixOrder order)
    {
        var small = records.Shop.AsNoTracking().Single().CureDivision;
        var formula = load.Batch.FormulaVersion;
        var planned = Trade.Formulas.FormulaScaling.Scale(formula.ToTrade(), block, small).Lines;
        return [.. formula.Ingredients.OrderBy(line => line.Position).Select((line, i) =>
        {
            var (weighed, keyedIn) = order.Ingredients.TryGetValue(line.Position, out var typed) ? typed : (Weight.Zero, small.Unit);
            return new LoadIngredient(line.Position, line.Name, planned[i].Amount, weighed, keyedIn, line.Nitrite, line.Nitrate);
        })];
    }

    private static List<Finding> Refusals(RecordsContext records, Load load, MixOrder order, CureCheck? check, bool isManager)
    {
        List<Finding> findings = [.. records.StoppingBatch(load.BatchId, HeldAct.Batch)];
        foreach (var jobId in load.Batch.Entries.Select(entry => entry.JobId).Distinct())
            findings.AddRange(records.Stopping(jobId, HeldAct.Batch));
        if (order.Fat.IsZero && load.AddedFat.IsPositive)
            findings.Add(new Finding("Fat", $"Type what was weighed in of {load.Batch.FormulaVersion.AddedFat ?? "the added fat"}."));
        if (check is { Meets: false })
            findings.AddRange(check.Findings);
        else if (check is { BelowMinimum: true } && string.IsNullOrWhiteSpace(order.LowCureBecause))
            findings.AddRange(check.Findings.Select(finding => finding with { Text = finding.Text + " Weigh more cure in, or let the manager give a reason." }));
        else if (check is { BelowMinimum: true } && !isManager)
            findings.Add(new Finding("LowCureBecause", "Only the manager accepts less cure than the minimum. Weigh more cure in, or fetch the manager."));
        return findings;
    }
}
