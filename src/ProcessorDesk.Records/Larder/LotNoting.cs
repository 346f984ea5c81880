using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>What of a lot went into a load that is mixed already.</summary>
/// <param name="Position">The line of the formula; null for the added fat and for casings.</param>
/// <param name="Amount">By weight; zero for casings.</param>
/// <param name="Pieces">By the piece; zero for all else.</param>
public sealed record LotNote(int LoadId, int? Position, int LotId, Weight Amount, int Pieces);

/// <summary>Lots of a load put right after it was mixed: noted late, or struck out as wrong.</summary>
public static class LotNoting
{
    /// <summary>Its result is the load's id. Where the lot's label brings the cure over its limit, the batch goes on hold.</summary>
    public static Outcome NoteLot(this RecordsContext records, LotNote note, Act act)
    {
        var load = Load(records, note.LoadId);
        if (BatchRecord.Over(load.Batch) is { } over)
            return Outcome.Refused(over);
        if (load.MixedAt is null)
            return Outcome.Refused(new Finding("", $"Load {load.Number} is not mixed yet: its lots are noted with the mixing."));
        var lot = records.IngredientLots.Include(one => one.Ingredient).Single(one => one.Id == note.LotId);
        if (LotsUsed.Wrong(load, note.Position, lot) is { } wrong)
            return Outcome.Refused(wrong with { Field = "Lot" });
        if (lot.Ingredient.GoesByPiece ? note.Pieces <= 0 : !note.Amount.IsPositive)
            return Outcome.Refused(new Finding("Amount", "Type how much of it went in, more than nothing."));
        if (note.Position is { } position && load.Ingredients.Single(line => line.Position == position) is var line
            && load.LotUses.Where(use => use.StruckAt is null && use.Position == position).Aggregate(note.Amount, (sum, use) => sum + use.Amount) > line.Weighed)
            return Outcome.Refused(new Finding("Amount", $"That is more than went in of {line.Name}. Strike out the lot that is wrong first."));
        records.LotUses.Add(new LotUse(load.Id, lot.Id, note.Position, note.Amount, note.Pieces, act.Now, act.Hand.Id));
        records.SaveChanges();
        LotsUsed.MarkUsedUp(records, [lot], act);
        return Checked(records, load, act);
    }

    public static Outcome StrikeLotUse(this RecordsContext records, int useId, string? because, Act act)
    {
        var load = Load(records, records.LotUses.Where(one => one.Id == useId).Select(one => one.LoadId).Single());
        var use = load.LotUses.Single(one => one.Id == useId);
        if (BatchRecord.Over(load.Batch) is { } over)
            return Outcome.Refused(over);
        if (use.StruckAt is not null)
            return Outcome.Refused(new Finding("", "This was struck out before."));
        if (string.IsNullOrWhiteSpace(because))
            return Outcome.Refused(new Finding("Because", "Say why it is struck out."));
        use.StrikeOut(because, act.Now, act.Hand.Id);
        return Checked(records, load, act);
    }

    /// <summary>The lots of a load were put right, so its cure is reckoned again; what does not meet is held.</summary>
    private static Outcome Checked(RecordsContext records, Load load, Act act)
    {
        if (load.StricterCure(load.WeighedBlock, load.Ingredients) is { Meets: false } check
            && !records.Holds.Standing().Any(hold => hold.BatchId == load.BatchId && hold.Reason == HoldReason.WrongMeatIn))
            records.Holds.Add(Hold.OnBatch(load.BatchId, HoldReason.WrongMeatIn, $"Load {load.Number}, by its lots: {check.Findings[0].Text}", act.Now, act.Hand.Id));
        return Outcome.Done(load.Id);
    }

    private static Load Load(RecordsContext records, int id) => records.Loads
        .Include(one => one.Batch).ThenInclude(batch => batch.Product)
        .Include(one => one.Batch).ThenInclude(batch => batch.FormulaVersion).ThenInclude(formula => formula.Ingredients)
        .Include(one => one.Draws)
        .Include(one => one.Ingredients)
        .Include(one => one.LotUses).ThenInclude(use => use.Lot)
        .AsSplitQuery()
        .Single(one => one.Id == id);
}
