using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>One weighing at the cutting table: into a lug, or of something that stays in none.</summary>
/// <param name="LugId">The lug the meat stays in; null for what is weighed and goes on at once, whose tare is then taken off alone.</param>
/// <param name="AnimalIds">Whose meat it is; a lug that is opened names at least one.</param>
/// <param name="AgainBecause">Why what stands in the lug is weighed again; null where nothing should stand in it.</param>
public sealed record TableWeighing(
    int JobId, WeighInKind Kind, int? LugId, IReadOnlyList<int> AnimalIds, Weight Gross, Weight Tare, Reading Reading, string? AgainBecause = null);

/// <summary>Books weights at the cutting table.</summary>
public static class TableWeighings
{
    /// <summary>Opens or continues the filling, strikes what is weighed again, books the weight; its result is the weigh-in's id.</summary>
    public static Outcome WeighAtTable(this RecordsContext records, TableWeighing order, Act act)
    {
        if (records.Jobs.Any(job => job.Id == order.JobId && (job.CuttingStartedAt == null || job.CuttingDoneAt != null)))
            return Outcome.Refused(new Finding("", "Somebody finished the cutting of this job meanwhile. Bring it back to the table first."));
        var (weighIn, refusal) = order.LugId is { } lugId
            ? InLug(records, order, lugId, act)
            : (WeighIn.OfJob(order.Kind, order.JobId, order.AnimalIds is [var only] ? only : null, order.Gross, order.Tare, order.Reading, act.Now, act.Hand.Id), null);
        if (weighIn is null)
            return Outcome.Refused(refusal!);
        records.WeighIns.Add(weighIn);
        records.SaveChanges();
        return Outcome.Done(weighIn.Id);
    }

    private static (WeighIn? WeighIn, Finding? Refusal) InLug(RecordsContext records, TableWeighing order, int lugId, Act act)
    {
        var lug = records.Lugs.Single(one => one.Id == lugId);
        var filling = records.Fillings.Open().SingleOrDefault(one => one.LugId == lugId);
        if (filling is not null && filling.JobId != order.JobId)
            return (null, new Finding("Lug", $"Lug {lug.Number} was taken for another job meanwhile. Take another lug."));
        if (filling is null)
        {
            filling = new Filling(lug, order.JobId, [.. order.AnimalIds], act.Now);
            records.Fillings.Add(filling);
            records.SaveChanges();
            act.NewTicket(TicketKind.Filling, filling.Id);
        }
        else if (StrikeBefore(records, filling, lug, order.AgainBecause, act) is { } refusal)
        {
            return (null, refusal);
        }

        return (WeighIn.OfFilling(order.Kind, filling, order.Gross, order.Reading, act.Now, act.Hand.Id), null);
    }

    private static Finding? StrikeBefore(RecordsContext records, Filling filling, Lug lug, string? because, Act act)
    {
        var standing = records.WeighIns.Include(one => one.Strike).Standing().Where(one => one.FillingId == filling.Id).ToList();
        if (standing.Count > 0 && because is null)
            return new Finding("Lug", $"Somebody weighed lug {lug.Number} meanwhile. Look at the last weights, then weigh again if you must.");
        return standing.Select(one => one.StrikeOut($"weighed again: {because!.Trim()}", act.Now, act.Hand.Id)).OfType<Finding>().FirstOrDefault();
    }
}
