using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;
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
    /// <summary>What the second weighing showed of each cure, by its position. A cure that is not in it was weighed once.</summary>
    public IReadOnlyDictionary<int, (Weight Weighed, WeightUnit KeyedIn)> Again { get; init; } = new Dictionary<int, (Weight, WeightUnit)>();

    /// <summary>Whose hand weighed again; null for the hand that mixes.</summary>
    public int? AgainById { get; init; }

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
    /// The cure is checked on the meat and the cure as weighed, by both weighings. Over the limit, or with none where the product is cured, the
    /// load does not start and nobody overrides it; under the minimum it needs the manager's reason. Without a second weighing, or with one that
    /// disagrees with the first, it does not start either. Said to be mixed already, it is booked and the batch put on hold.
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
        var small = records.Shop.AsNoTracking().Single().CureDivision;
        var scaled = FormulaScaling.Scale(load.Batch.FormulaVersion.ToTrade(), block, small);
        var ingredients = Weighed(load, order, scaled, lots, act);
        if (order.AlreadyInBecause is { } because)
        {
            if (string.IsNullOrWhiteSpace(because))
                return Outcome.Refused(new Finding("AlreadyInBecause", "Say how it came to be mixed."));
            records.Holds.Add(Hold.OnBatch(load.BatchId, HoldReason.WrongMeatIn, $"Load {load.Number}: {because.Trim()}", act.Now, act.Hand.Id));
        }
        else if (MixRefusals.Of(records, load, order, ingredients, small, isManager) is { Count: > 0 } findings)
        {
            return Outcome.Refused(findings);
        }

        var isLow = load.CureOf(block, ingredients) is { BelowMinimum: true } || load.CureAgain(block, ingredients) is { BelowMinimum: true };
        load.Mix(order.Fat, ingredients, isLow ? order.LowCureBecause : null, order.AlreadyInBecause, act.Now, act.Hand.Id);
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

    private static void AllMixed(RecordsContext records, Batch batch, Act act)
    {
        batch.Mixed(BatchRules.Of(records.Shop.AsNoTracking().Single(), batch.Product), act.Now);
        if (batch.FormulaVersion.RestMinutes > 0)
            records.BatchSteps.Add(new BatchStep(batch.Id, BatchStepKind.RestStarted, act.Now, act.Hand.Id));
    }

    private static List<LoadIngredient> Weighed(Load load, MixOrder order, ScaledFormula scaled, Dictionary<int, IngredientLot> lots, Act act) =>
    [
        .. load.Batch.FormulaVersion.Ingredients.OrderBy(line => line.Position).Zip(scaled.Lines, (line, asked) =>
        {
            var (weighed, keyedIn) = order.Ingredients.TryGetValue(line.Position, out var typed) ? typed : (Weight.Zero, WeightUnit.Gram);
            var lot = order.Lots.TryGetValue(line.Position, out var id) ? lots[id] : null;
            var again = order.Again.TryGetValue(line.Position, out var second) ? new WeighedAgain(second.Weighed, second.KeyedIn, order.AgainById ?? act.Hand.Id) : null;
            return new LoadIngredient(line, lot, asked.Amount, weighed, keyedIn, again);
        }),
    ];
}
