using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>A share as a query reads it, beside the others of its animal.</summary>
public sealed record ShareRow(int JobId, int Numerator, int Denominator)
{
    /// <summary>A job's share among all of its animal.</summary>
    /// <param name="ofAnimal">Every share of the animal, the earliest given first.</param>
    public static OwnersShare Of(IReadOnlyList<ShareRow> ofAnimal, int jobId) => new(
        OwnersShares.Of([.. ofAnimal.Select(row => Ratio.Of(row.Numerator, row.Denominator))]),
        ofAnimal.Select(row => row.JobId).ToList().IndexOf(jobId));
}
