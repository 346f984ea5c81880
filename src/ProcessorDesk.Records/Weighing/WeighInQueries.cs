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
}
