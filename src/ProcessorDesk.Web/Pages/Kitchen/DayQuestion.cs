using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Kitchen;
using ProcessorDesk.Trade.Kitchen.Planning;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>What waits for the kitchen, as the day's plan takes it; three queries.</summary>
/// <param name="Allotments">All that waits, held or not, by id.</param>
/// <param name="Formulas">Of what waits, with products and lines, by id.</param>
/// <param name="Meat">What nothing holds.</param>
/// <param name="Held">What stays out of the plan, and by which hold.</param>
public sealed record DayQuestion(
    IReadOnlyDictionary<int, WaitingAllotment> Allotments,
    IReadOnlyDictionary<int, FormulaVersion> Formulas,
    IReadOnlyList<WaitingMeat> Meat,
    IReadOnlyList<(WaitingAllotment Of, KitchenHold By)> Held,
    DaySettings Settings)
{
    public static DayQuestion Of(RecordsContext records, ShopDay shop)
    {
        var holds = KitchenHold.All(records, shop).Where(hold => hold.StopsBatch).SelectMany(hold => hold.JobIds.Select(job => (Job: job, Hold: hold))).ToLookup(one => one.Job, one => one.Hold);
        var waiting = records.WaitingAllotments();
        int[] ids = [.. waiting.Select(one => one.FormulaId).Distinct()];
        var formulas = records.FormulaVersions.AsNoTracking().AsSingleQuery()
            .Include(formula => formula.Product).Include(formula => formula.Ingredients)
            .Where(formula => ids.Contains(formula.Id)).ToDictionary(formula => formula.Id);
        var products = formulas.Values.ToDictionary(formula => formula.Id, formula => Product(formula, shop.Settings));
        return new DayQuestion(
            waiting.ToDictionary(one => one.Id),
            formulas,
            [.. waiting.Where(one => !holds.Contains(one.JobId)).Select(one => ToMeat(one, products[one.FormulaId], formulas[one.FormulaId].HasPork))],
            [.. waiting.Where(one => holds.Contains(one.JobId)).Select(one => (one, holds[one.JobId].First()))],
            Limits(shop.Settings));
    }

    public WaitingMeat MeatOf(int allotment) => Meat.Single(one => one.Id == allotment);

    private static KitchenProduct Product(FormulaVersion formula, ShopSettings shop) => new(
        formula.Id, formula.Product.Name, [.. AllergenWords.Shown(formula.Contains, shop).Select(Wording.Of)], formula.Product.Cured, IsSmoked(formula.Product.ProcessKind));

    /// <summary>What goes into the smokehouse, be it to dry or to ripen.</summary>
    private static bool IsSmoked(ProcessKind kind) => kind switch
    {
        ProcessKind.Fresh or ProcessKind.CuredRaw => false,
        ProcessKind.Smoked or ProcessKind.Cooked or ProcessKind.Fermented or ProcessKind.Dried => true,
    };

    /// <summary>Meat of several animals counts as of the first; meat of an unknown one as deer, which most of it is.</summary>
    private static WaitingMeat ToMeat(WaitingAllotment one, KitchenProduct product, bool hasPork)
    {
        var species = one.Species is [var first, ..] ? first : Species.WhiteTailDeer;
        return new WaitingMeat(
            one.Id, $"{one.Owner}, job {one.JobNumber}", product, one.OwnerId, one.Pooling == Pooling.Pooled, new BatchPart(one.Lean, one.AddedFat, one.Green), species,
            hasPork || one.Species.Any(animal => animal is Species.Hog or Species.WildBoar), one.Promised);
    }

    private static DaySettings Limits(ShopSettings shop) => new(
        shop.MixerCapacity, shop.SmallestFill, shop.SmokehouseHolds.IsZero ? null : shop.SmokehouseHolds, shop.DayHolds.IsZero ? null : shop.DayHolds, shop.BenchDivision, CleaningMinutes.Usual);
}
