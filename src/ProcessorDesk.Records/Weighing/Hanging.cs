using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>Gives a carcass its rail and its weights.</summary>
public static class Hanging
{
    /// <param name="kind">Arrival, hot or chilled hanging.</param>
    /// <param name="weight">At the rail's division; null where only the rail is noted.</param>
    /// <param name="because">Why a weight that stands is weighed again; it is struck out with this reason.</param>
    public static Outcome Hang(
        this RecordsContext records, int animalId, string? rail, WeighInKind kind, Weight? weight, string? because, Act act)
    {
        var animal = records.Animals.Single(one => one.Id == animalId);
        if (weight is null || kind != WeighInKind.Arrival)
            animal.Hang(rail, act.Now);
        if (weight is not { } weighed)
            return Outcome.Done(animalId);
        var before = records.WeighIns.Include(one => one.Strike).Standing()
            .Where(one => one.AnimalId == animalId && one.JobId == null && one.Kind == kind)
            .ToList();
        if (before.Count > 0 && string.IsNullOrWhiteSpace(because))
            return Outcome.Refused(new Finding("Because", "Somebody weighed this meanwhile. Say why it is weighed again."));
        var strikes = before.Select(one => one.StrikeOut(because!, act.Now, act.Hand.Id)).OfType<Finding>().ToList();
        if (strikes.Count > 0)
            return Outcome.Refused(strikes);
        var division = records.Shop.AsNoTracking().Single().RailDivision;
        records.WeighIns.Add(WeighIn.OfAnimal(kind, animalId, weighed, new Reading("rail", division), act.Now, act.Hand.Id));
        return Outcome.Done(animalId);
    }
}
