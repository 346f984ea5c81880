namespace ProcessorDesk.Records;

/// <summary>Whose a part is.</summary>
public static class PartQueries
{
    /// <summary>Parts that go back with a job. A part of a shared animal goes with the job the animal came in with, and with no other.</summary>
    public static IQueryable<Part> PartsOf(this RecordsContext records, int jobId)
    {
        var brought = records.Shares
            .Where(share => share.JobId == jobId && !records.Shares.Any(before => before.AnimalId == share.AnimalId && before.Id < share.Id))
            .Select(share => share.AnimalId);
        return records.Parts.Where(part => brought.Contains(part.AnimalId));
    }
}
