using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>Why a weight can't be moved as asked.</summary>
internal static class MoveRefusals
{
    public static List<Finding> Of(RecordsContext records, WeighIn weighIn, Job job, MoveOrder order, IReadOnlyList<Draw> draws)
    {
        if (weighIn.Job is not { } was || weighIn.Kind == WeighInKind.Box)
            return [new Finding("", weighIn.Kind == WeighInKind.Box ? "A box's weight goes with its box. Unpack the box at the freezer." : "Only what was weighed at the table is moved. Strike this weight out where it was weighed.")];
        List<Finding> findings = [];
        if (weighIn.Strike is not null)
            findings.Add(new Finding("", "This weight was struck out before."));
        if (string.IsNullOrWhiteSpace(order.Because))
            findings.Add(new Finding("Because", "Say how it came to be booked wrong."));
        if (job.HandedOverAt is not null)
            findings.Add(new Finding("JobNumber", $"Job {job.Number} was handed over, so nothing more is booked to it."));
        else if (job.CuttingStartedAt is null)
            findings.Add(new Finding("JobNumber", $"Cutting of job {job.Number} has not started. Start it on its cut sheet first."));
        var animals = records.Shares.Where(share => share.JobId == job.Id).Select(share => share.AnimalId).ToHashSet();
        if (order.AnimalIds.Count == 0 || order.AnimalIds.Any(id => !animals.Contains(id)))
            findings.Add(new Finding("AnimalIds", $"Choose whose meat it is, of the animals of job {job.Number}."));
        else if (was.Id == job.Id && IsSame(weighIn, order))
            findings.Add(new Finding("JobNumber", "It is booked to that job and that animal already."));
        findings.AddRange(draws.Select(draw => draw.Load.Batch).Distinct().Select(BatchRecord.Over).OfType<Finding>()
            .Select(over => over with { Text = over.Text + " Put it on hold, trace it, and tell the owners." }));
        // Meat that is in a load can't wait for a split to be withdrawn; meat that is not in one can.
        if (draws.Count == 0 && was.Id != job.Id && weighIn.Kind == WeighInKind.LeanTrim)
            findings.AddRange(new[] { was, job }.Where(one => one.AsksLocked).Select(one => new Finding("", $"The split of job {one.Number} is agreed on its lean. Withdraw that split at the grind first.")));
        return findings;
    }

    private static bool IsSame(WeighIn weighIn, MoveOrder order) => weighIn.Filling is { } filling
        ? filling.Animals.Select(one => one.AnimalId).Order().SequenceEqual(order.AnimalIds.Order())
        : order.AnimalIds is [var only] && weighIn.AnimalId == only;
}
