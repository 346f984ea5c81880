using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Formulas;

namespace ProcessorDesk.SeedDemo;

/// <summary>The kitchen's acts on a batch, each played through the verbs the pages use.</summary>
internal sealed class DemoKitchen(RecordsContext records)
{
    /// <summary>Draws what each load wants from its owners' lugs, in the order the lugs were filled; a lug that is drawn dry is emptied.</summary>
    public Outcome DrawAll(int batchId, Act act)
    {
        var division = records.Shop.AsNoTracking().Single().BenchDivision;
        var parts = records.LoadParts.AsNoTracking().Where(part => records.Loads.Any(load => load.Id == part.LoadId && load.BatchId == batchId))
            .OrderBy(part => part.LoadId).ThenBy(part => part.EntryId)
            .Select(part => new { part.LoadId, part.Lean, part.Entry.JobId })
            .ToList();
        foreach (var part in parts)
        {
            var wanted = part.Lean;
            foreach (var fillingId in records.Fillings.Open().Where(filling => filling.JobId == part.JobId).OrderBy(filling => filling.Id).Select(filling => filling.Id).ToList())
            {
                var left = records.LeftIn(fillingId, division);
                var drawn = Weight.Min(wanted, left);
                if (!drawn.IsPositive)
                    continue;
                var outcome = records.DrawMeat(new DrawOrder(part.LoadId, fillingId, drawn, division.CountOf(drawn) == division.CountOf(left)), act);
                if (!outcome.IsDone)
                    return outcome;
                wanted -= drawn;
                records.SaveChanges();
            }
        }

        return Outcome.Done(batchId);
    }

    /// <summary>Mixes every load with what the formula asks for on the meat as drawn.</summary>
    public Outcome MixAll(int batchId, Act act)
    {
        var small = records.Shop.AsNoTracking().Single().CureDivision;
        var formula = records.FormulaVersions.AsNoTracking().Include(one => one.Product).Include(one => one.Ingredients)
            .Single(one => records.Batches.Any(batch => batch.Id == batchId && batch.FormulaVersionId == one.Id));
        foreach (var load in records.Loads.AsNoTracking().Include(one => one.Draws).Where(one => one.BatchId == batchId).OrderBy(one => one.Number).ToList())
        {
            var scaled = FormulaScaling.Scale(formula.ToTrade(), load.Drawn + load.AddedFat, small);
            var weighed = formula.Ingredients.OrderBy(line => line.Position).Zip(scaled.Lines)
                .ToDictionary(one => one.First.Position, one => (one.Second.Amount, WeightUnit.Gram));
            var outcome = records.MixLoad(new MixOrder(load.Id, load.AddedFat, weighed), isManager: false, act);
            if (!outcome.IsDone)
                return outcome;
            records.SaveChanges();
        }

        return Outcome.Done(batchId);
    }
}
