using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Yields;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Counter;

/// <summary>What was typed about an animal, read and without problems.</summary>
public sealed record AnimalFacts(AnimalInput Typed, Weight? ArrivalWeight, Temperature? Surface, DateOnly? HarvestedOn)
{
    /// <summary>Writes everything but the weight onto the animal, and puts on or releases the holds that follow from it.</summary>
    public void WriteOn(Animal animal, DateOnly today, DateTime at, int byId)
    {
        animal.Describe(Typed.Species, Typed.Sex, Typed.State ?? ArrivalState.Unknown, Surface, Typed.Condition, Typed.CattleAge);
        animal.Identify(Typed.Tag, Typed.Licence, Typed.Confirmation, HarvestedOn, Typed.Area);
        var resultOn = Typed.DiseaseTest is DiseaseTest.NotDetected or DiseaseTest.Detected ? animal.ResultOn ?? today : (DateOnly?)null;
        animal.RecordDiseaseTest(Typed.DiseaseTest, Typed.SampleNumber, animal.Laboratory, resultOn);
        animal.LookAgain(HangingGuidance.For(Typed.Species).WarnAbove, at, byId);
    }

    /// <summary>A new animal with its share, parts, holds and arrival weight; not saved yet.</summary>
    public Animal TakeIn(RecordsContext records, ShopDay day, Job job, Act act)
    {
        var animal = new Animal(Typed.Species, Typed.State ?? ArrivalState.Unknown, act.Now);
        animal.ShareWith(job, Ratio.One, Portion.Whole);
        foreach (var kind in Typed.Parts.Distinct())
            animal.KeepPart(kind, Typed.PartNote);
        WriteOn(animal, day.Today, act.Now, act.Hand.Id);
        records.Animals.Add(animal);
        if (ArrivalWeight is { } weight)
            records.WeighIns.Add(WeighIn.OfAnimal(WeighInKind.Arrival, animal, weight, Scale(day.Settings, weight), act.Now, act.Hand.Id));
        return animal;
    }

    /// <summary>The rail's scale where the figure lies on its division, otherwise the bench's.</summary>
    private static Reading Scale(ShopSettings shop, Weight weight) =>
        shop.RailDivision.Round(weight) == weight ? new Reading("Rail", shop.RailDivision) : new Reading("Bench", shop.BenchDivision);
}
