using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Web.Pages.Cutting;

/// <summary>One weighing at the table, read and looked over: opens or continues its filling, strikes what it replaces, books it.</summary>
internal sealed record BenchOrder(
    WeighInInput Input, int JobId, LugChoice? Lug, ScaleWeight Scale, IReadOnlyList<int> AnimalIds, Reading Reading)
{
    public Outcome Save(RecordsContext records, Act act)
    {
        if (records.Jobs.Any(job => job.Id == JobId && (job.CuttingStartedAt == null || job.CuttingDoneAt != null)))
            return Outcome.Refused(new Finding("", "Somebody finished the cutting of this job meanwhile. Bring it back to the table first."));
        var kind = Input.Kind;
        WeighIn weighIn;
        if (Lug is null || !ScaleWeight.StaysInLug(kind))
        {
            weighIn = WeighIn.OfJob(kind, JobId, AnimalIds is [var only] ? only : null, Scale.Gross, Scale.Tare, Reading, act.Now, act.Hand.Id);
        }
        else
        {
            var filling = records.Fillings.Open().SingleOrDefault(one => one.LugId == Lug.LugId);
            if (filling is not null && filling.JobId != JobId)
                return Outcome.Refused(new Finding("Lug", $"Lug {Lug.Number} was taken for another job meanwhile. Take another lug."));
            if (filling is null)
                filling = Open(records, act);
            else if (StrikeBefore(records, filling, act) is { } refusal)
                return Outcome.Refused(refusal);
            weighIn = WeighIn.OfFilling(kind, filling, Scale.Gross, Reading, act.Now, act.Hand.Id);
        }

        records.WeighIns.Add(weighIn);
        records.SaveChanges();
        return Outcome.Done(weighIn.Id);
    }

    private Filling Open(RecordsContext records, Act act)
    {
        var filling = new Filling(records.Lugs.Single(lug => lug.Id == Lug!.LugId), JobId, [.. AnimalIds], act.Now);
        records.Fillings.Add(filling);
        records.SaveChanges();
        act.NewTicket(TicketKind.Filling, filling.Id);
        return filling;
    }

    private Finding? StrikeBefore(RecordsContext records, Filling filling, Act act)
    {
        var standing = records.WeighIns.Include(one => one.Strike).Standing().Where(one => one.FillingId == filling.Id).ToList();
        if (standing.Count > 0 && !Input.Again)
            return new Finding("Lug", $"Somebody weighed lug {Lug!.Number} meanwhile. Look at the last weights, then weigh again if you must.");
        return standing.Select(one => one.StrikeOut($"weighed again: {Input.AgainBecause.Trim()}", act.Now, act.Hand.Id)).OfType<Finding>().FirstOrDefault();
    }
}
