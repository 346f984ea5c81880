using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>Meat as it goes from a lug into the mixer.</summary>
/// <param name="Weighed">Net, at the bench's division.</param>
/// <param name="EmptiesLug">Nothing is left in the lug; what it lacks against its weigh-in is thaw and drip.</param>
/// <param name="AlreadyInBecause">It is in already although it should not be: how that came about. Null asks whether it may.</param>
public sealed record DrawOrder(int LoadId, int FillingId, Weight Weighed, bool EmptiesLug, string? AlreadyInBecause = null);

/// <summary>Drawing meat into loads.</summary>
public static class Drawing
{
    /// <summary>
    /// Refuses a lug of an owner who has no place in the load, of a job on hold, or with much less in it. Said to be in already, the
    /// same is booked and the batch put on hold, for facts come first. Its result is the draw's id.
    /// </summary>
    public static Outcome DrawMeat(this RecordsContext records, DrawOrder order, Act act)
    {
        var load = records.Loads.Include(one => one.Batch).Include(one => one.Parts).ThenInclude(part => part.Entry).Include(one => one.Draws).AsSplitQuery().Single(one => one.Id == order.LoadId);
        var filling = records.Fillings.Include(one => one.Lug).Include(one => one.Job).Single(one => one.Id == order.FillingId);
        if (Impossible(load, order) is { } impossible)
            return Outcome.Refused(impossible);
        var shop = records.Shop.AsNoTracking().Single();
        var entries = records.BatchEntries.AsNoTracking().Where(one => one.BatchId == load.BatchId && one.LeftAt == null && one.JobId == filling.JobId).Select(one => one.Id).ToList();
        if (order.AlreadyInBecause is not { } because)
        {
            if (DrawRefusals.Of(records, load, filling, entries, order, shop) is { Count: > 0 } wrong)
                return Outcome.Refused(wrong);
        }
        else
        {
            if (string.IsNullOrWhiteSpace(because))
                return Outcome.Refused(new Finding("AlreadyInBecause", "Say how it came to be in."));
            records.Holds.Add(Hold.OnBatch(load.BatchId, HoldReason.WrongMeatIn, $"Load {load.Number}, lug {filling.Lug.Number}: {because.Trim()}", act.Now, act.Hand.Id));
        }

        // A job may have several places in a batch; the one that wants most of this load is filled first.
        var entry = entries.OrderByDescending(load.WantedOf).ThenBy(id => id).Select(id => (int?)id).FirstOrDefault();
        var wanted = entry is { } place ? Weight.Max(Weight.Zero, load.WantedOf(place)) : Weight.Zero;
        var draw = new Draw(load.Id, filling.Id, entry, wanted, order.Weighed, shop.BenchDivision, order.AlreadyInBecause, act.Now, act.Hand.Id);
        records.Draws.Add(draw);
        if (order.EmptiesLug)
            filling.Empty(act.Now);
        records.SaveChanges();
        return Outcome.Done(draw.Id);
    }

    /// <summary>Takes a draw out of the load, and its meat back into its lug; only before the load is mixed.</summary>
    public static Outcome StrikeDraw(this RecordsContext records, int drawId, string? because, Act act)
    {
        var draw = records.Draws.Include(one => one.Load).ThenInclude(load => load.Batch).Single(one => one.Id == drawId);
        if (BatchRecord.Over(draw.Load.Batch) is { } over)
            return Outcome.Refused(over);
        if (draw.StruckAt is not null)
            return Outcome.Refused(new Finding("", "This was struck out before."));
        if (draw.Load.MixedAt is not null)
            return Outcome.Refused(new Finding("", "This load is mixed: what is in it can't be taken back. Put the batch on hold if it is wrong."));
        if (string.IsNullOrWhiteSpace(because))
            return Outcome.Refused(new Finding("Because", "Say why it is struck out."));
        draw.StrikeOut(because, act.Now, act.Hand.Id);
        return Outcome.Done(draw.LoadId);
    }

    /// <summary>What the lug still holds: its standing lean weight less what was drawn from it.</summary>
    public static Weight LeftIn(this RecordsContext records, int fillingId, ScaleDivision division) =>
        records.LeanIn(fillingId, division) - division.Sum(records.Draws.AsNoTracking().Where(draw => draw.FillingId == fillingId && draw.StruckAt == null).Select(draw => draw.Weighed).ToList());

    /// <summary>
    /// Whether the lug was emptied by a draw that was struck out since: then the meat is in it after all, and may be drawn anew.
    /// </summary>
    public static bool WasEmptiedByMistake(this RecordsContext records, Filling filling) =>
        filling.EmptiedAt is { } emptied && records.Draws.Any(draw => draw.FillingId == filling.Id && draw.StruckAt != null && draw.At == emptied);

    /// <summary>The lug's standing lean weight, as it was weighed at the table.</summary>
    internal static Weight LeanIn(this RecordsContext records, int fillingId, ScaleDivision division) =>
        division.Sum(records.WeighIns.AsNoTracking().Standing()
            .Where(weighIn => weighIn.FillingId == fillingId && weighIn.Kind == WeighInKind.LeanTrim).Select(weighIn => weighIn.Net).ToList());

    /// <summary>What not even a mistake can have done.</summary>
    private static Finding? Impossible(Load load, DrawOrder order) =>
        BatchRecord.Over(load.Batch) is { } over ? over
        : load.MixedAt is null && load.Batch.MixedAt is not null ? new Finding("", $"The mixing of batch {load.Batch.Number} was finished without load {load.Number}.")
        : !order.Weighed.IsPositive ? new Finding("Weighed", "Type what the scale shows, more than zero.")
        : null;
}
