using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>What was weighed for a job and is not struck. Sums are made in divisions, as an owner adds up the printed figures.</summary>
/// <param name="Boxes">Net, of the boxes that were not unpacked, here or handed over.</param>
public sealed record JobWeights(
    IReadOnlyList<AnimalWeights> Animals, Weight Lean, Weight Cuts, Weight Fat, Weight Bone, Weight Discard, Weight Boxes)
{
    /// <param name="weighed">Of the job and of its animals, the oldest first.</param>
    public static JobWeights Of(IEnumerable<SharedAnimal> animals, IEnumerable<WeighedNet> weighed, ScaleDivision division)
    {
        var all = weighed.ToList();
        var ofJob = all.Where(one => one.JobId is not null).ToLookup(one => one.Kind, one => one.Net);
        var ofAnimal = all.Where(one => one.JobId is null).ToLookup(one => (one.AnimalId, one.Kind), one => one.Net);
        Weight? Last(int animalId, WeighInKind kind) => ofAnimal[(animalId, kind)].Select(net => (Weight?)net).LastOrDefault();
        return new JobWeights(
            [
                .. animals.Select(animal => new AnimalWeights(
                    animal.AnimalId, animal.Species, animal.Tag, animal.ArrivalState, animal.ArrivedAt, animal.Share,
                    Last(animal.AnimalId, WeighInKind.Arrival),
                    Last(animal.AnimalId, WeighInKind.HotHanging),
                    Last(animal.AnimalId, WeighInKind.ChilledHanging)))
            ],
            division.Sum(ofJob[WeighInKind.LeanTrim]),
            division.Sum(ofJob[WeighInKind.CutPack]),
            division.Sum(ofJob[WeighInKind.FatTrim]),
            division.Sum(ofJob[WeighInKind.Bone]),
            division.Sum(ofJob[WeighInKind.Discard]),
            division.Sum(ofJob[WeighInKind.Box]));
    }
}

/// <summary>An animal and what of it is a job's.</summary>
public sealed record SharedAnimal(int AnimalId, Species Species, string? Tag, ArrivalState ArrivalState, DateTime ArrivedAt, OwnersShare Share);

/// <summary>The net of a weigh-in that stands; of the job where it has one, otherwise of the whole animal.</summary>
public sealed record WeighedNet(WeighInKind Kind, int? AnimalId, int? JobId, Weight Net);

/// <summary>The weights of one whole animal of a job, whatever part of it is the job's. The last standing one of a kind counts.</summary>
/// <param name="Share">What of the animal is the job's.</param>
/// <param name="Arrival">As keyed; null where it was not weighed.</param>
/// <param name="HotHanging">As keyed; null where it was not weighed.</param>
/// <param name="ChilledHanging">As keyed; null where it was not weighed.</param>
public sealed record AnimalWeights(
    int AnimalId,
    Species Species,
    string? Tag,
    ArrivalState ArrivalState,
    DateTime ArrivedAt,
    OwnersShare Share,
    Weight? Arrival,
    Weight? HotHanging,
    Weight? ChilledHanging)
{
    /// <summary>What of the animal is the job's, exactly.</summary>
    public Ratio Fraction => Share.Fraction;

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
                Owners = records.Shares.Where(one => one.AnimalId == share.AnimalId).OrderBy(one => one.Id)
                    .Select(one => new ShareRow(one.JobId, one.Numerator, one.Denominator)).ToList(),
            })
            .AsSingleQuery()
            .ToList();
        return records.WeightsOf(jobId, division, shares.Select(share => new SharedAnimal(
            share.AnimalId, share.Species, share.Tag, share.ArrivalState, share.ArrivedAt, ShareRow.Of(share.Owners, jobId))));
    }

    /// <summary>The same for a job whose animals are read already; one query.</summary>
    public static JobWeights WeightsOf(this RecordsContext records, int jobId, ScaleDivision division, IEnumerable<SharedAnimal> animals) => JobWeights.Of(
        animals, records.WeighedFor(jobId).Select(weighIn => new WeighedNet(weighIn.Kind, weighIn.AnimalId, weighIn.JobId, weighIn.Net)), division);

    /// <summary>The standing weigh-ins of a job and of its animals before they were divided, the oldest first.</summary>
    public static IQueryable<WeighIn> WeighedFor(this RecordsContext records, int jobId) => records.WeighIns.AsNoTracking().Standing()
        .WeighedFor(records, jobId)
        .OrderBy(weighIn => weighIn.At).ThenBy(weighIn => weighIn.Id);

    /// <summary>Weigh-ins of a job and of its animals before they were divided.</summary>
    /// <remarks>Asked for with "is null", SQLite would look through every weigh-in without a job; asked so, it goes by the animals.</remarks>
    public static IQueryable<WeighIn> WeighedFor(this IQueryable<WeighIn> weighIns, RecordsContext records, int jobId) => weighIns
        .Where(weighIn => weighIn.JobId == jobId
            || (weighIn.JobId ?? 0) == 0 && records.Shares.Where(share => share.JobId == jobId).Select(share => (int?)share.AnimalId).Contains(weighIn.AnimalId));

    /// <summary>Weigh-ins of whole animals, before they were divided.</summary>
    public static IQueryable<WeighIn> OfAnimals(this IQueryable<WeighIn> weighIns, IQueryable<int> animalIds) =>
        weighIns.Where(weighIn => (weighIn.JobId ?? 0) == 0 && animalIds.Select(id => (int?)id).Contains(weighIn.AnimalId));
}
