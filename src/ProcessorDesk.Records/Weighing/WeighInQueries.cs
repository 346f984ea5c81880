using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>Sums that leave struck weights out.</summary>
public static class WeighInQueries
{
    public static IQueryable<WeighIn> Standing(this IQueryable<WeighIn> weighIns) => weighIns.Where(weighIn => weighIn.Strike == null);

    /// <summary>The job's lean trim for grind, added up as printed.</summary>
    public static Weight LeanOf(this RecordsContext records, int jobId, ScaleDivision division) =>
        division.Sum(records.WeighIns.AsNoTracking().Standing()
            .Where(weighIn => weighIn.JobId == jobId && weighIn.Kind == WeighInKind.LeanTrim)
            .Select(weighIn => weighIn.Net)
            .ToList());

    /// <summary>Net of the job's newest standing weigh-in of a kind; null where there is none.</summary>
    public static Weight? LastOf(this RecordsContext records, int jobId, WeighInKind kind) =>
        records.WeighIns.AsNoTracking().Standing()
            .Where(weighIn => weighIn.JobId == jobId && weighIn.Kind == kind)
            .OrderByDescending(weighIn => weighIn.Id)
            .Select(weighIn => (Weight?)weighIn.Net)
            .FirstOrDefault();
}
