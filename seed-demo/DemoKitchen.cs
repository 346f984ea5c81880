using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Formulas;

namespace ProcessorDesk.SeedDemo;

/// <summary>The kitchen's acts on a batch, each played through the verbs the pages use.</summary>
internal sealed class DemoKitchen(RecordsContext records)
{
    private static readonly Weight s_drip = Weight.FromPounds(0.04m);

    /// <summary>Draws what a load wants from its owners' lugs, in the order the lugs were filled; a lug that is drawn dry lacks what dripped off.</summary>
    public Outcome Draw(int batchId, int loadNumber, Act act)
    {
        var division = records.Shop.AsNoTracking().Single().BenchDivision;
        var parts = records.LoadParts.AsNoTracking().Where(part => part.Load.BatchId == batchId && part.Load.Number == loadNumber)
            .OrderBy(part => part.EntryId)
            .Select(part => new { part.LoadId, part.Lean, part.Entry.JobId })
            .ToList();
        foreach (var part in parts)
        {
            var wanted = part.Lean;
            foreach (var fillingId in records.Fillings.Open().Where(filling => filling.JobId == part.JobId).OrderBy(filling => filling.Id).Select(filling => filling.Id).ToList())
            {
                var left = records.LeftIn(fillingId, division);
                var taken = Weight.Min(wanted, left);
                if (!taken.IsPositive)
                    continue;
                var isLast = division.CountOf(taken) == division.CountOf(left);
                var drawn = isLast && taken > s_drip ? division.Round(taken - s_drip) : taken;
                var outcome = records.DrawMeat(new DrawOrder(part.LoadId, fillingId, drawn, isLast), act);
                if (!outcome.IsDone)
                    return outcome;
                wanted -= taken;
            }
        }

        return Outcome.Done(batchId);
    }

    /// <summary>Mixes a load with what the formula asks for on the meat as drawn, out of the oldest lots that have enough left.</summary>
    public Outcome Mix(int batchId, int loadNumber, Act act)
    {
        var small = records.Shop.AsNoTracking().Single().CureDivision;
        var formula = records.FormulaVersions.AsNoTracking().Include(one => one.Product).Include(one => one.Ingredients)
            .Single(one => records.Batches.Any(batch => batch.Id == batchId && batch.FormulaVersionId == one.Id));
        var load = records.Loads.AsNoTracking().Include(one => one.Draws).Single(one => one.BatchId == batchId && one.Number == loadNumber);
        var scaled = FormulaScaling.Scale(formula.ToTrade(), load.Drawn + load.AddedFat, small);
        var weighed = formula.Ingredients.OrderBy(line => line.Position).Zip(scaled.Lines)
            .ToDictionary(one => one.First.Position, one => (one.Second.Amount, WeightUnit.Gram));
        var open = records.IngredientLots.Open().OnHand(records);
        int? Lot(int? ingredient, Weight amount, long pieces) =>
            open.Where(lot => lot.IngredientId == ingredient && lot.Left >= amount && lot.PiecesLeft >= pieces).OrderBy(lot => lot.ReceivedOn).Select(lot => (int?)lot.Id).FirstOrDefault();
        return records.MixLoad(
            new MixOrder(load.Id, load.AddedFat, weighed)
            {
                Again = weighed,
                Lots = formula.Ingredients.Select(line => (line.Position, Lot: Lot(line.IngredientId, weighed[line.Position].Amount, 0)))
                    .Where(line => line.Lot is not null).ToDictionary(line => line.Position, line => line.Lot!.Value),
                FatLotId = Lot(formula.AddedFatIngredientId, load.AddedFat, 0),
                CasingLotId = Lot(formula.CasingIngredientId, Weight.Zero, scaled.Pieces.Sum(piece => piece.Count)),
            },
            isManager: false,
            act);
    }
}
