using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>What was weighed for a job and is not struck. Sums are made in divisions, as an owner adds up the printed figures.</summary>
public sealed record JobWeights(
    IReadOnlyList<AnimalWeights> Animals, Weight Lean, Weight Cuts, Weight Fat, Weight Bone, Weight Discard);

/// <summary>The weights of one whole animal of a job, whatever part of it is the job's. The last standing one of a kind counts.</summary>
/// <param name="Fraction">What of the animal is the job's.</param>
/// <param name="Arrival">As keyed; null where it was not weighed.</param>
/// <param name="HotHanging">As keyed; null where it was not weighed.</param>
/// <param name="ChilledHanging">As keyed; null where it was not weighed.</param>
public sealed record AnimalWeights(
    int AnimalId,
    Species Species,
    string? Tag,
    ArrivalState ArrivalState,
    DateTime ArrivedAt,
    Ratio Fraction,
    Weight? Arrival,
    Weight? HotHanging,
    Weight? ChilledHanging)
{
    /// <summary>Chilled where it was weighed so, hot otherwise.</summary>
    public Weight? Hanging => ChilledHanging ?? HotHanging;
}

/// <summary>Reads the weights of a job.</summary>
public static class JobWeightQueries
{
    /// <summary>Two queries: the animals, and the standing weigh-ins of the job and of its animals.</summary>
    /// <param name="division">Of the scale whose figures are printed: the bench's.</param>
    public static JobWeights WeightsOf(this RecordsContext records, int jobId, ScaleDivision division)
    {
        var shares = records.Shares.AsNoTracking()
            .Where(share => share.JobId == jobId)
            .OrderBy(share => share.AnimalId)
            .Select(share => new
            {
                share.AnimalId,
                share.Animal.Species,
                share.Animal.Tag,
                share.Animal.ArrivalState,
                share.Animal.ArrivedAt,
                share.Numerator,
                share.Denominator,
            })
            .ToList();
        var weighed = records.WeighIns.AsNoTracking().Standing()
            .Where(weighIn => weighIn.JobId == jobId
                || weighIn.JobId == null && records.Shares.Any(share => share.JobId == jobId && share.AnimalId == weighIn.AnimalId))
            .OrderBy(weighIn => weighIn.At).ThenBy(weighIn => weighIn.Id)
            .Select(weighIn => new Weighed(weighIn.Kind, weighIn.AnimalId, weighIn.JobId, weighIn.Net))
            .ToList();
        var ofJob = weighed.Where(one => one.JobId == jobId).ToLookup(one => one.Kind, one => one.Net);
        var ofAnimal = weighed.Where(one => one.JobId is null).ToLookup(one => (one.AnimalId, one.Kind), one => one.Net);
        Weight? Last(int animalId, WeighInKind kind) => ofAnimal[(animalId, kind)].Select(net => (Weight?)net).LastOrDefault();
        return new JobWeights(
            [
                .. shares.Select(share => new AnimalWeights(
                    share.AnimalId, share.Species, share.Tag, share.ArrivalState, share.ArrivedAt, Ratio.Of(share.Numerator, share.Denominator),
                    Last(share.AnimalId, WeighInKind.Arrival),
                    Last(share.AnimalId, WeighInKind.HotHanging),
                    Last(share.AnimalId, WeighInKind.ChilledHanging)))
            ],
            division.Sum(ofJob[WeighInKind.LeanTrim]),
            division.Sum(ofJob[WeighInKind.CutPack]),
            division.Sum(ofJob[WeighInKind.FatTrim]),
            division.Sum(ofJob[WeighInKind.Bone]),
            division.Sum(ofJob[WeighInKind.Discard]));
    }

    private sealed record Weighed(WeighInKind Kind, int? AnimalId, int? JobId, Weight Net);
}
