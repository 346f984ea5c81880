using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Curing;
using ProcessorDesk.Trade.Formulas;

namespace ProcessorDesk.Records;

/// <summary>A load as it is mixed.</summary>
/// <param name="Fat">Added fat as weighed; zero where none goes in.</param>
/// <param name="Ingredients">What was weighed of each line of the formula, by its position.</param>
/// <param name="LowCureBecause">The manager's reason for less cure than product kept cold should have.</param>
/// <param name="AlreadyInBecause">It is mixed already although it should not be: how that came about. Null asks whether it may.</param>
public sealed record MixOrder(
    int LoadId, Weight Fat, IReadOnlyDictionary<int, (Weight Weighed, WeightUnit KeyedIn)> Ingredients, string? LowCureBecause = null, string? AlreadyInBecause = null)
{
    /// <summary>The lot of each line of the formula, by its position. A line that is not in it has no lot noted.</summary>
    public IReadOnlyDictionary<int, int> Lots { get; init; } = new Dictionary<int, int>();

    /// <summary>The lot of the added fat; null where none was noted.</summary>
    public int? FatLotId { get; init; }

    /// <summary>The lot of the casings; null where none was noted.</summary>
    public int? CasingLotId { get; init; }
}

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

        var lots = LotsUsed.Read(records, order);
        if (LotsUsed.Wrong(load, order, lots).ToList() is { Count: > 0 } wrong)
            return Outcome.Refused(wrong);
        var block = load.Drawn + order.Fat;
        var scaled = FormulaScaling.Scale(load.Batch.FormulaVersion.ToTrade(), block, records.Shop.AsNoTracking().Single().CureDivision);
        var ingredients = Weighed(load, order, scaled, lots);
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
        LotsUsed.Note(records, load, order, lots, scaled, act);
        if (load.Batch.Loads.All(one => one.MixedAt is not null))
            AllMixed(records, load.Batch, act);
        return Outcome.Done(load.BatchId);
    }

    /// <summary>All the meat went into fewer loads than were planned: those without any are not made.</summary>
    public static Outcome FinishMixing(this RecordsContext records, int batchId, Act act)
    {
        var batch = records.Batches.Include(one => one.Product).Include(one => one.FormulaVersion).Include(one => one.Loads).ThenInclude(load => load.Draws).Single(one => one.Id == batchId);
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
    /// The check on what is weighed, each lot by its own label; null where the product is not cured and nothing in it holds cure. Product,
    /// batch and lots must have been loaded; without lots each ingredient counts at the strength of the mixing.
    /// </summary>
    public static CureCheck? CureOf(this Load load, Weight block, IReadOnlyCollection<LoadIngredient> ingredients)
    {
        CureAmount[] cures = [.. ingredients.SelectMany(line => line.ToCures(load.LotUses)).Where(cure => !cure.Nitrite.IsZero || !cure.Nitrate.IsZero)];
        var meat = ingredients.Where(line => line.InMeatBlock).Aggregate(block, (sum, line) => sum + line.Weighed);
        return load.Batch.Product.Cured || cures.Length > 0 ? ComminutedCure.Check(meat, cures) : null;
    }

    private static void AllMixed(RecordsContext records, Batch batch, Act act)
    {
        batch.Mixed(BatchRules.Of(records.Shop.AsNoTracking().Single(), batch.Product), act.Now);
        if (batch.FormulaVersion.RestMinutes > 0)
            records.BatchSteps.Add(new BatchStep(batch.Id, BatchStepKind.RestStarted, act.Now, act.Hand.Id));
    }

    private static List<LoadIngredient> Weighed(Load load, MixOrder order, ScaledFormula scaled, Dictionary<int, IngredientLot> lots) =>
    [
        .. load.Batch.FormulaVersion.Ingredients.OrderBy(line => line.Position).Zip(scaled.Lines, (line, asked) =>
        {
            var (weighed, keyedIn) = order.Ingredients.TryGetValue(line.Position, out var typed) ? typed : (Weight.Zero, WeightUnit.Gram);
            var lot = order.Lots.TryGetValue(line.Position, out var id) ? lots[id] : null;
            return new LoadIngredient(line, lot, asked.Amount, weighed, keyedIn);
        }),
    ];

    private static List<Finding> Refusals(RecordsContext records, Load load, MixOrder order, CureCheck? check, bool isManager)
    {
        List<Finding> findings = [.. records.StoppingBatch(load.BatchId, HeldAct.Batch)];
        foreach (var jobId in load.Batch.Entries.Select(entry => entry.JobId).Distinct())
            findings.AddRange(records.Stopping(jobId, HeldAct.Batch));
        if (order.Fat.IsZero && load.AddedFat.IsPositive)
            findings.Add(new Finding("Fat", $"Type what was weighed in of {load.Batch.FormulaVersion.AddedFat ?? "the added fat"}."));
        if (check is { Meets: false })
            findings.AddRange(check.Findings);
        else if (check is not null && load.Batch.Product.Cured && !IsCured(load, order))
            findings.Add(new Finding("Cure", "There is no cure in this mix but what cured meat brings along. Weigh the cure in.", "", "", CureLimits.ComminutedNitrite.Source));
        else if (check is { BelowMinimum: true } && string.IsNullOrWhiteSpace(order.LowCureBecause))
            findings.AddRange(check.Findings.Select(finding => finding with { Text = finding.Text + " Weigh more cure in, or let the manager give a reason." }));
        else if (check is { BelowMinimum: true } && !isManager)
            findings.Add(new Finding("LowCureBecause", "Only the manager accepts less cure than the minimum. Weigh more cure in, or fetch the manager."));
        return findings;
    }

    /// <summary>Something that cures was weighed in; bacon ends and other meat that was cured before do not count.</summary>
    private static bool IsCured(Load load, MixOrder order) =>
        load.Batch.FormulaVersion.Ingredients.Any(line => line.Cures && order.Ingredients.TryGetValue(line.Position, out var typed) && typed.Weighed.IsPositive);
}
