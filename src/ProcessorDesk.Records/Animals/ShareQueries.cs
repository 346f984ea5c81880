using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>Whether what came in belongs to somebody, all of it.</summary>
public static class ShareQueries
{
    /// <summary>
    /// The job's animals whose shares do not come to one yet, as findings: no knife goes in before. Empty where the way is free.
    /// </summary>
    public static IReadOnlyList<Finding> NotFullyShared(this RecordsContext records, int jobId)
    {
        var animals = records.Shares.AsNoTracking().Where(share => share.JobId == jobId).Select(share => share.AnimalId);
        return
        [
            .. records.Shares.AsNoTracking()
                .Where(share => animals.Contains(share.AnimalId))
                .Select(share => new { share.AnimalId, share.Animal.Tag, share.Numerator, share.Denominator })
                .AsEnumerable()
                .GroupBy(share => (share.AnimalId, share.Tag), share => Ratio.Of(share.Numerator, share.Denominator))
                .Select(animal => (animal.Key.Tag, Sum: animal.Aggregate(Ratio.Zero, (sum, share) => sum + share)))
                .Where(animal => animal.Sum != Ratio.One)
                .Select(animal => new Finding(
                    "Fraction",
                    $"{(animal.Tag is null ? "An animal of this job" : $"The animal with tag {animal.Tag}")} is shared out only to {animal.Sum}. Share out the rest first.",
                    animal.Sum.ToString(),
                    "1"))
        ];
    }
}
