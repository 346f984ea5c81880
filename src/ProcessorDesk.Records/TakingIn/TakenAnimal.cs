using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Yields;

namespace ProcessorDesk.Records;

/// <summary>What is known of an animal when it is taken in, or mended later.</summary>
public sealed record TakenAnimal(Species Species, ArrivalState State)
{
    public Sex Sex { get; init; }

    public CattleAge? CattleAge { get; init; }

    public string? Tag { get; init; }

    public string? Licence { get; init; }

    public string? Confirmation { get; init; }

    public DateOnly? HarvestedOn { get; init; }

    public string? Area { get; init; }

    public Weight? ArrivalWeight { get; init; }

    /// <summary>Why a weight that was written down before is another now.</summary>
    public string WeightBecause { get; init; } = "";

    public Temperature? Surface { get; init; }

    public string? Condition { get; init; }

    public DiseaseTest DiseaseTest { get; init; } = DiseaseTest.NotRequired;

    public string? SampleNumber { get; init; }

    public IReadOnlyList<PartKind> Parts { get; init; } = [];

    public string? PartNote { get; init; }

    /// <summary>Writes everything but the weight and the parts onto the animal, and puts on or releases the holds that follow from it.</summary>
    public void WriteOn(Animal animal, DateOnly today, DateTime at, int byId)
    {
        animal.Describe(Species, Sex, State, Surface, Condition, CattleAge);
        animal.Identify(Tag, Licence, Confirmation, HarvestedOn, Area);
        var resultOn = DiseaseTest is DiseaseTest.NotDetected or DiseaseTest.Detected ? animal.ResultOn ?? today : (DateOnly?)null;
        animal.RecordDiseaseTest(DiseaseTest, SampleNumber, animal.Laboratory, resultOn);
        animal.LookAgain(HangingGuidance.For(Species).WarnAbove, at, byId);
    }

    /// <summary>A new animal, all of it the job's, with its parts, holds and arrival weight; not saved yet.</summary>
    internal Animal TakeIn(RecordsContext records, ShopSettings shop, DateOnly today, Job job, Act act)
    {
        var animal = new Animal(Species, State, act.Now);
        animal.ShareWith(job, Ratio.One, Portion.Whole);
        foreach (var kind in Parts.Distinct())
            animal.KeepPart(kind, PartNote);
        WriteOn(animal, today, act.Now, act.Hand.Id);
        records.Animals.Add(animal);
        if (ArrivalWeight is { } weight)
            records.WeighIns.Add(WeighIn.OfAnimal(WeighInKind.Arrival, animal, weight, Scale(shop, weight), act.Now, act.Hand.Id));
        return animal;
    }

    /// <summary>
    /// Changes a kept animal: details, holds, more parts. A weight that differs strikes the one before and stands beside it.
    /// Its holds and parts must have been loaded.
    /// </summary>
    public Outcome Change(RecordsContext records, Animal animal, DateOnly today, Act act)
    {
        WriteOn(animal, today, act.Now, act.Hand.Id);
        var added = Parts.Distinct().Select(kind => animal.KeepPart(kind, PartNote)).ToList();
        if (WeighAgain(records, animal, act) is { } refusal)
            return Outcome.Refused(refusal);
        records.SaveChanges();
        foreach (var part in added)
            act.NewTicket(TicketKind.Part, part.Id);
        return Outcome.Done(animal.Id);
    }

    private Finding? WeighAgain(RecordsContext records, Animal animal, Act act)
    {
        var before = records.WeighIns.Include(weighIn => weighIn.Strike)
            .Where(weighIn => weighIn.AnimalId == animal.Id && weighIn.Kind == WeighInKind.Arrival && weighIn.Strike == null)
            .OrderByDescending(weighIn => weighIn.Id).FirstOrDefault();
        if (ArrivalWeight is not { } weight || weight == before?.Net)
            return null;
        if (before?.StrikeOut(WeightBecause, act.Now, act.Hand.Id) is { } refusal)
            return refusal with { Field = nameof(WeightBecause) };
        var shop = records.Shop.AsNoTracking().Single();
        records.WeighIns.Add(WeighIn.OfAnimal(WeighInKind.Arrival, animal, weight, Scale(shop, weight), act.Now, act.Hand.Id));
        return null;
    }

    /// <summary>The rail's scale where the figure lies on its division, otherwise the bench's.</summary>
    private static Reading Scale(ShopSettings shop, Weight weight) =>
        shop.RailDivision.Round(weight) == weight ? new Reading("Rail", shop.RailDivision) : new Reading("Bench", shop.BenchDivision);
}
