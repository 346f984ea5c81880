using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>A weight that was booked to the wrong job or the wrong animal, and where it belongs.</summary>
/// <param name="AnimalIds">Whose meat it is; of that job.</param>
/// <param name="Because">How it came about; it stands at the strike.</param>
public sealed record MoveOrder(int WeighInId, int JobId, IReadOnlyList<int> AnimalIds, string Because);

/// <summary>Moves what was booked wrong: struck out with its reason, and booked anew where it belongs, at once.</summary>
public static class Moving
{
    /// <summary>
    /// A lug moves as a whole: its filling, what was weighed into it, its ticket. Meat of it that is in a load is booked there as the right
    /// owner's; where that is another's, or held, the batch goes on hold. Its result is the id of the new weigh-in.
    /// </summary>
    public static Outcome MoveWeighIn(this RecordsContext records, MoveOrder order, Act act)
    {
        var weighIn = records.WeighIns.Include(one => one.Strike).Include(one => one.Job).Include(one => one.Filling).ThenInclude(filling => filling!.Lug)
            .Include(one => one.Filling).ThenInclude(filling => filling!.Animals).Single(one => one.Id == order.WeighInId);
        var job = records.Jobs.Include(one => one.Owner).Single(one => one.Id == order.JobId);
        var draws = weighIn.FillingId is { } from
            ? records.Draws.Include(draw => draw.Load).ThenInclude(load => load.Batch).Where(draw => draw.FillingId == from && draw.StruckAt == null).ToList()
            : [];
        if (MoveRefusals.Of(records, weighIn, job, order, draws) is { Count: > 0 } findings)
            return Outcome.Refused(findings);

        if (weighIn.Filling is not { } filling)
            return Booked(records, weighIn, WeighIn.OfJob(weighIn.Kind, job.Id, order.AnimalIds is [var only] ? only : null, weighIn.Gross, weighIn.Tare, weighIn.AsRead, act.Now, act.Hand.Id), order, act);
        var moved = MoveFilling(records, filling, order, act);
        foreach (var other in records.WeighIns.Include(one => one.Strike).Standing().Where(one => one.FillingId == filling.Id && one.Id != weighIn.Id).ToList())
            Booked(records, other, WeighIn.OfFilling(other.Kind, moved, other.Gross, other.AsRead, act.Now, act.Hand.Id), order, act);
        var outcome = Booked(records, weighIn, WeighIn.OfFilling(weighIn.Kind, moved, weighIn.Gross, weighIn.AsRead, act.Now, act.Hand.Id), order, act);
        foreach (var load in draws.GroupBy(draw => draw.Load))
            Rebook(records, load.Key, [.. load], moved, weighIn.Job!, job, order, act);
        return outcome;
    }

    private static Outcome Booked(RecordsContext records, WeighIn wrong, WeighIn right, MoveOrder order, Act act)
    {
        if (wrong.StrikeOut(order.Because, act.Now, act.Hand.Id) is { } refusal)
            return Outcome.Refused(refusal);
        records.WeighIns.Add(right);
        records.SaveChanges();
        return Outcome.Done(right.Id);
    }

    /// <summary>The same use of the lug under its right name, with a ticket of its own; one that was emptied stays so.</summary>
    private static Filling MoveFilling(RecordsContext records, Filling filling, MoveOrder order, Act act)
    {
        var emptied = filling.EmptiedAt;
        filling.Empty(act.Now);
        records.SaveChanges();
        var moved = filling.MovedTo(order.JobId, order.AnimalIds, emptied);
        records.Fillings.Add(moved);
        records.SaveChanges();
        var ticket = act.NewTicket(TicketKind.Filling, moved.Id);
        foreach (var old in records.Tickets.Where(one => one.Kind == TicketKind.Filling && one.TargetId == filling.Id && one.VoidedAt == null))
            old.Void(act.Now, ticket);
        return moved;
    }

    /// <summary>What was drawn stays in the load, by whose hand and when it was, booked as the right owner's meat.</summary>
    private static void Rebook(RecordsContext records, Load load, IReadOnlyList<Draw> draws, Filling moved, Job was, Job job, MoveOrder order, Act act)
    {
        var because = $"Lug {moved.Lug.Number} was booked to job {was.Number} and is of job {job.Number}: {order.Because.Trim()}";
        var place = records.BatchEntries.Where(one => one.BatchId == load.BatchId && one.LeftAt == null && one.JobId == job.Id).OrderBy(one => one.Id).Select(one => (int?)one.Id).FirstOrDefault();
        foreach (var draw in draws)
        {
            draw.StrikeOut(because, act.Now, act.Hand.Id);
            records.Draws.Add(new Draw(load.Id, moved.Id, place, draw.Planned, draw.Weighed, draw.KeyedDivision, because, draw.At, draw.ById));
        }

        if (was.Id != job.Id || records.Stopping(job.Id, HeldAct.Batch).Count > 0)
            records.Holds.Add(Hold.OnBatch(load.BatchId, HoldReason.WrongMeatIn, $"Load {load.Number}. {because}", act.Now, act.Hand.Id));
        records.SaveChanges();
    }
}
