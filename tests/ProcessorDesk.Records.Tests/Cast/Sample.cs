using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Records.Tests.Cast;

/// <summary>The small cast: an owner with a deer, taken in as the counter does.</summary>
public static class Sample
{
    public static Reading Bench { get; } = new("bench", ScaleDivision.HundredthPound);

    public static Job Job(RecordsContext records, Act act, string owner = "Sample Owner")
    {
        var list = records.PriceLists.InForceOn(DateOnly.FromDateTime(act.Now)).Single();
        var job = new Job(act.NextJobNumber(), new Owner(owner, "555-0100"), act.Now, act.Hand.Id, list.Id);
        records.Jobs.Add(job);
        records.SaveChanges();
        return job;
    }

    public static Animal Deer(RecordsContext records, Job job, Act act, string? tag = null)
    {
        var deer = new Animal(Species.WhiteTailDeer, ArrivalState.FieldDressed, act.Now);
        deer.Identify(tag, null, null, null, null);
        deer.ShareWith(job, Ratio.One, Portion.Whole);
        records.Animals.Add(deer);
        records.SaveChanges();
        return deer;
    }

    public static Filling Lug(RecordsContext records, Job job, Animal animal, Act act)
    {
        var number = 1 + (records.Lugs.Max(lug => (int?)lug.Number) ?? 0);
        var filling = new Filling(new Lug(number, Weight.FromPounds(2.5m), act.Now), job.Id, [animal.Id], act.Now);
        records.Fillings.Add(filling);
        records.SaveChanges();
        return filling;
    }

    public static WeighIn Lean(RecordsContext records, Filling filling, decimal grossPounds, Act act)
    {
        var weighIn = WeighIn.OfFilling(WeighInKind.LeanTrim, filling, Weight.FromPounds(grossPounds), Bench, act.Now, act.Hand.Id);
        records.WeighIns.Add(weighIn);
        records.SaveChanges();
        return weighIn;
    }

    public static Product PlainGround(RecordsContext records) =>
        records.Products.Include(product => product.Formulas).Single(product => product.IsPlainGround);
}
