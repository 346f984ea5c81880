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
    /// Refuses a lug of an owner who has no place in the batch, of a job on hold, or with less in it. Said to be in already, the
    /// same is booked and the batch put on hold, for facts come first.
    /// </summary>
    public static Outcome DrawMeat(this RecordsContext records, DrawOrder order, Act act)
    {
        var load = records.Loads.Include(one => one.Batch).Include(one => one.Parts).Include(one => one.Draws).AsSplitQuery().Single(one => one.Id == order.LoadId);
        var filling = records.Fillings.Include(one => one.Lug).Single(one => one.Id == order.FillingId);
        var division = records.Shop.AsNoTracking().Single().BenchDivision;
        var entry = records.BatchEntries.Where(one => one.BatchId == load.BatchId && one.JobId == filling.JobId).Select(one => (int?)one.Id).FirstOrDefault();
        if (Impossible(load, order) is { } impossible)
            return Outcome.Refused(impossible);
        var wrong = Wrong(records, filling, entry, order, division);
        if (order.AlreadyInBecause is null && wrong.Count > 0)
            return Outcome.Refused(wrong);
        if (order.AlreadyInBecause is { } because)
        {
            if (string.IsNullOrWhiteSpace(because))
                return Outcome.Refused(new Finding("AlreadyInBecause", "Say how it came to be in."));
            records.Holds.Add(Hold.OnBatch(load.BatchId, HoldReason.WrongMeatIn, $"Load {load.Number}, lug {filling.Lug.Number}: {because.Trim()}", act.Now, act.Hand.Id));
        }

        var wanted = load.Parts.Where(part => part.EntryId == entry).Aggregate(Weight.Zero, (sum, part) => sum + part.Lean)
            - load.Draws.Where(draw => draw.StruckAt is null && draw.EntryId == entry).Aggregate(Weight.Zero, (sum, draw) => sum + draw.Weighed);
        var draw = new Draw(
            load.Id, filling.Id, entry, entry is null ? Weight.Zero : Weight.Max(Weight.Zero, wanted), order.Weighed, division, order.AlreadyInBecause, act.Now, act.Hand.Id);
        records.Draws.Add(draw);
        if (order.EmptiesLug)
            filling.Empty(act.Now);
        records.SaveChanges();
        return Outcome.Done(draw.Id);
    }

    public static Outcome StrikeDraw(this RecordsContext records, int drawId, string? because, Act act)
    {
        var draw = records.Draws.Include(one => one.Load).Single(one => one.Id == drawId);
        if (draw.StruckAt is not null)
            return Outcome.Refused(new Finding("", "This was struck out before."));
        if (draw.Load.MixedAt is not null)
            return Outcome.Refused(new Finding("", "This load is mixed: what is in it can't be taken back. Put the batch on hold if it is wrong."));
        if (string.IsNullOrWhiteSpace(because))
            return Outcome.Refused(new Finding("Because", "Say why it is struck out."));
        draw.StrikeOut(because, act.Now, act.Hand.Id);
        return Outcome.Done(drawId);
    }

    /// <summary>What the lug still holds: its standing lean weight less what was drawn from it.</summary>
    public static Weight LeftIn(this RecordsContext records, int fillingId, ScaleDivision division) =>
        division.Sum(records.WeighIns.AsNoTracking().Standing()
            .Where(weighIn => weighIn.FillingId == fillingId && weighIn.Kind == WeighInKind.LeanTrim).Select(weighIn => weighIn.Net).ToList())
        - division.Sum(records.Draws.AsNoTracking().Where(draw => draw.FillingId == fillingId && draw.StruckAt == null).Select(draw => draw.Weighed).ToList());

    private static Finding? Impossible(Load load, DrawOrder order) =>
        load.Batch.EndedAt is not null ? new Finding("", "This batch is over.")
        : load.MixedAt is not null ? new Finding("", $"Load {load.Number} is mixed already. Draw into another load.")
        : !order.Weighed.IsPositive ? new Finding("Weighed", "Type what the scale shows, more than zero.")
        : null;

    private static List<Finding> Wrong(RecordsContext records, Filling filling, int? entry, DrawOrder order, ScaleDivision division)
    {
        var findings = new List<Finding>();
        if (entry is null)
            findings.Add(new Finding("Lug", $"Lug {filling.Lug.Number} is another owner's: nothing of that job is planned for this batch. Set it aside."));
        findings.AddRange(records.Stopping(filling.JobId, HeldAct.Batch).Select(finding => finding with { Field = "Lug" }));
        if (filling.EmptiedAt is not null)
            findings.Add(new Finding("Lug", $"Lug {filling.Lug.Number} was emptied before. Look at its number again."));
        else if (records.LeftIn(filling.Id, division) is var left && division.CountOf(order.Weighed) > division.CountOf(left))
            findings.Add(new Finding("Weighed", $"Lug {filling.Lug.Number} holds {division.Print(left)} by its weigh-in. Weigh again, or mend the lug's weight at the table first."));
        return findings;
    }
}
