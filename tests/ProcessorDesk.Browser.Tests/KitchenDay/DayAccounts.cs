using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using Xunit;

namespace ProcessorDesk.Browser.Tests.KitchenDay;

/// <summary>
/// The day's closing: the shop's file against the hand's notebook, in whole hundredths of a pound, and none of the product's own sums. A pound is
/// 453,592.37 mg (NIST Handbook 44, Appendix C).
/// </summary>
internal static class DayAccounts
{
    /// <summary>What an owner brought was drawn, dripped off, or is in a lug still, and nothing else became of it.</summary>
    public static (long In, long Drawn, long Drip, long Still) OfOwner(RecordsContext records, DayNotes notes, DayOwner owner)
    {
        var fillings = records.Fillings.Where(filling => filling.Job.Owner.Name == owner.Name).Select(filling => new { filling.Id, Lug = filling.Lug.Number, IsEmpty = filling.EmptiedAt != null }).ToList();
        long weighed = 0, drawn = 0, drip = 0, still = 0;
        foreach (var filling in fillings)
        {
            var ofLug = Sum(records.WeighIns.Where(one => one.FillingId == filling.Id && one.Strike == null).Select(one => one.Net));
            var intoLoads = Sum(records.Draws.Where(one => one.FillingId == filling.Id && one.StruckAt == null).Select(one => one.Weighed));
            var noted = notes.Draws.Where(draw => draw.Lug == filling.Lug).ToList();
            Assert.Equal(Count(noted.Sum(draw => draw.Pounds)), intoLoads);
            Assert.Equal(noted.Any(draw => draw.Empties), filling.IsEmpty);
            if (filling.IsEmpty)
                Assert.Equal(Count(noted.Sum(draw => draw.Drip)), ofLug - intoLoads);
            weighed += ofLug;
            drawn += intoLoads;
            drip += filling.IsEmpty ? ofLug - intoLoads : 0;
            still += filling.IsEmpty ? 0 : ofLug - intoLoads;
        }

        Assert.Equal(Count(owner.Lean), weighed);
        Assert.Equal(weighed, drawn + drip + still);
        Assert.Equal(owner.Name switch { DayOwners.Held => Count(owner.Lean), DayOwners.Later => Count(owner.Of(DayGoods.Plain)), _ => 0 }, still);
        return (weighed, drawn, drip, still);
    }

    /// <summary>What went into a batch came out of it: finished, left in the machines, or lost; as the notebook has it and as its page said.</summary>
    public static (long In, long Finished, long Left, long Loss) OfBatch(RecordsContext records, DayNotes notes, DayBatch batch)
    {
        var loads = records.Loads.Where(load => load.BatchId == batch.Id).ToList();
        var drawn = Sum(records.Draws.Where(draw => draw.Load.BatchId == batch.Id && draw.StruckAt == null).Select(draw => draw.Weighed));
        var fat = loads.Sum(load => Count(load.FatWeighed!.Value));
        var ids = batch.Loads.ToList();
        var grams = records.LoadIngredients.Where(line => ids.Contains(line.LoadId)).Select(line => line.Weighed).AsEnumerable().Sum(weighed => weighed.Milligrams) / 1000m;
        var weights = records.WeighIns.Where(one => one.BatchId == batch.Id && one.Strike == null).ToList();
        var finished = weights.Where(one => one.Kind == WeighInKind.FinishedProduct).Sum(one => Count(one.Net));
        var left = weights.Where(one => one.Kind == WeighInKind.LeftInMachines).Sum(one => Count(one.Net));
        var ingredients = decimal.ToInt64(decimal.Round(grams / 4.5359237m, MidpointRounding.AwayFromZero));
        var loss = drawn + fat + ingredients - finished - left;

        var mixes = notes.Mixes.Where(mix => mix.Batch == batch.Id).ToList();
        var scales = notes.Finished.Where(one => one.Batch == batch.Id).ToList();
        Assert.Equal(Count(batch.Loads.Sum(notes.DrawnInto)), drawn);
        Assert.Equal(Count(mixes.Sum(mix => mix.Fat)), fat);
        Assert.Equal(mixes.Sum(mix => mix.Grams), grams);
        Assert.Equal(Count(scales.Sum(one => one.Pounds)), finished);
        Assert.Equal(Count(scales.Sum(one => one.Left)), left);
        Assert.True(loss >= 0, $"Batch {batch.Number} made {-loss} hundredths of a pound out of nothing.");
        var said = notes.Balances[batch.Id];
        Assert.Equal(Print(drawn), said["Meat drawn"]);
        Assert.Equal(Print(fat), said["Added fat"]);
        Assert.Equal(Print(ingredients), said["Seasoning, cure and water"]);
        Assert.Equal(Print(finished), said["Finished"]);
        Assert.Equal(Print(left), said["Left in the machines"]);
        Assert.StartsWith(Print(loss), said["Lost in cooking, smoking and drying"], StringComparison.Ordinal);
        return (drawn + fat + ingredients, finished, left, loss);
    }

    /// <summary>No load has more nitrite than 156.25 ppm of its meat block (9 CFR 424.21(c)); each load's, in ppm. Each cure was weighed twice.</summary>
    public static IReadOnlyList<decimal> CureOf(RecordsContext records, DayBatch batch) =>
    [
        .. records.Loads.Where(load => load.BatchId == batch.Id).Include(load => load.Ingredients).Include(load => load.Draws).AsEnumerable().Select(load =>
        {
            var block = load.Draws.Where(draw => draw.StruckAt is null).Sum(draw => draw.Weighed.Milligrams) + load.FatWeighed!.Value.Milligrams;
            var nitrite = load.Ingredients.Where(line => line.Name == DayGoods.Cure).Sum(line => line.Weighed.Milligrams) * 0.0625m;
            Assert.Equal(nitrite, load.Ingredients.Where(line => line.Name == DayGoods.Cure).Sum(line => line.WeighedAgain!.Value.Milligrams) * 0.0625m);
            return nitrite / block * 1_000_000m;
        })
    ];

    /// <summary>Every ingredient of a load that has an ingredient in the larder, but water, came out of a lot to the last gram, and the fat too.</summary>
    public static void LotsOf(RecordsContext records, DayBatch batch)
    {
        foreach (var load in records.Loads.Where(load => load.BatchId == batch.Id).Include(load => load.Ingredients).Include(load => load.LotUses).AsSplitQuery())
        {
            foreach (var line in load.Ingredients.Where(line => line.Name != "Water"))
                Assert.Equal(line.Weighed.Milligrams, load.LotUses.Where(use => use.Position == line.Position && use.StruckAt is null).Sum(use => use.Amount.Milligrams));
            Assert.Equal(load.FatWeighed!.Value.Milligrams, load.LotUses.Where(use => use.Position is null && use.Pieces == 0).Sum(use => use.Amount.Milligrams));
        }
    }

    public static long Count(decimal pounds) => decimal.ToInt64(pounds * 100m);

    /// <summary>Hundredths of a pound; a weight beside the scale's division is none the bench has shown. A net is of two readings, each to the milligram.</summary>
    public static long Count(Weight weight)
    {
        var count = decimal.Round(weight.Milligrams / 4_535.9237m);
        Assert.True(Math.Abs(weight.Milligrams - count * 4_535.9237m) <= 1.5m, $"{weight.Milligrams} mg lies beside the division of the bench scale.");
        return decimal.ToInt64(count);
    }

    public static string Print(long hundredths) => FormattableString.Invariant($"{hundredths / 100m:#,0.00} lb");

    private static long Sum(IQueryable<Weight> weights) => weights.AsEnumerable().Sum(Count);
}
