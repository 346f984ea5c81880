using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>A load as its page shows it: what is wanted of whom, where it lies, what is in, what holds it, which lots. Five queries.</summary>
public sealed class LoadView
{
    private LoadView(Load load, IReadOnlyList<KitchenHold> holds) => (Load, Holds) = (load, holds);

    public Load Load { get; }

    public Batch Batch => Load.Batch;

    public IReadOnlyList<KitchenHold> Holds { get; }

    public bool IsOpen => Batch is { ReleasedAt: null, EndedAt: null };

    /// <summary>Meat may still be drawn and the load mixed.</summary>
    public bool IsToMix => IsOpen && Load.MixedAt is null && Batch.MixedAt is null;

    /// <summary>All that was planned is in, but for thaw and drip.</summary>
    public bool IsFull => BatchProgress.IsFull(Load.Lean.Milligrams, Load.Drawn.Milligrams);

    /// <summary>Whose meat belongs in it, in the order of the plan.</summary>
    public IReadOnlyList<Wanted> Wants { get; private init; } = [];

    /// <summary>Newest first.</summary>
    public IReadOnlyList<Drawn> Draws { get; private init; } = [];

    /// <summary>Initials of who mixed it; empty until then.</summary>
    public string MixedBy { get; private init; } = "";

    /// <summary>What was weighed in besides the meat; empty until it was mixed.</summary>
    public IReadOnlyList<LoadIngredient> Ingredients { get; private init; } = [];

    /// <summary>Initials of who weighed a cure again, by its position.</summary>
    public IReadOnlyDictionary<int, string> AgainBy { get; private init; } = new Dictionary<int, string>();

    /// <summary>It is mixed with cure, and no second weighing of it is noted.</summary>
    public bool LacksSecondWeighing => Load.LacksSecondWeighing(Ingredients);

    public static LoadView? Find(RecordsContext records, int id, ShopDay shop)
    {
        // Tracked, so that the two queries find each other; see BatchGraph.
        var parts = records.LoadParts.Where(part => part.LoadId == id).WithWhose()
            .Include(part => part.Load).ThenInclude(one => one.Batch).ThenInclude(batch => batch.FormulaVersion).ThenInclude(formula => formula.Ingredients)
            .ToList();
        if (parts.Count == 0)
            return null;
        var load = parts[0].Load;
        var draws = records.Draws.Where(draw => draw.LoadId == id).OrderByDescending(draw => draw.Id)
            .Select(draw => new
            {
                Draw = draw,
                draw.Filling,
                draw.Filling.Lug,
                draw.Filling.Job,
                draw.Filling.Job.Owner,
                By = records.Staff.Where(staff => staff.Id == draw.ById).Select(staff => staff.Initials).First(),
                StruckBy = records.Staff.Where(staff => staff.Id == draw.StruckById).Select(staff => staff.Initials).FirstOrDefault(),
                MixedBy = records.Staff.Where(staff => staff.Id == draw.Load.MixedById).Select(staff => staff.Initials).FirstOrDefault(),
            })
            .ToList();
        // Tracked, so that the check of the cure finds the lots by their labels.
        if (load.MixedAt is not null)
            records.LotUses.Where(use => use.LoadId == id).Include(use => use.Lot).ThenInclude(lot => lot.Ingredient).Load();
        var ingredients = load.MixedAt is null ? [] : records.LoadIngredients.AsNoTracking().Where(line => line.LoadId == id).OrderBy(line => line.Position)
            .Select(line => new { Line = line, AgainBy = records.Staff.Where(staff => staff.Id == line.AgainById).Select(staff => staff.Initials).FirstOrDefault() })
            .ToList();
        var lugs = load.MixedAt is null ? Lugs(records, [.. parts.Select(part => part.Entry.JobId)], shop) : Enumerable.Empty<LugInReach>().ToLookup(lug => lug.JobId);
        return new LoadView(load, KitchenHold.OfBatch(records, load.BatchId, [load], shop))
        {
            Wants = [.. parts.OrderBy(part => part.EntryId).Select(part => new Wanted(part.Entry, part.Lean, load.DrawnOf(part.EntryId), [.. lugs[part.Entry.JobId]]))],
            Draws = [.. draws.Select(one => new Drawn(one.Draw, one.By, one.StruckBy))],
            MixedBy = draws.Select(one => one.MixedBy).FirstOrDefault() ?? "",
            Ingredients = [.. ingredients.Select(one => one.Line)],
            AgainBy = ingredients.Where(one => one.AgainBy is not null).ToDictionary(one => one.Line.Position, one => one.AgainBy!),
        };
    }

    private static ILookup<int, LugInReach> Lugs(RecordsContext records, IReadOnlyList<int> jobs, ShopDay shop) =>
        records.Fillings.AsNoTracking().Open().Where(filling => jobs.Contains(filling.JobId))
            .OrderBy(filling => filling.Lug.Number)
            .Select(filling => new
            {
                filling.JobId,
                filling.Lug.Number,
                Lean = records.WeighIns.Where(one => one.FillingId == filling.Id && one.Kind == WeighInKind.LeanTrim && !records.Strikes.Any(strike => strike.WeighInId == one.Id)).Sum(one => one.Net.Milligrams),
                Drawn = records.Draws.Where(draw => draw.FillingId == filling.Id && draw.StruckAt == null).Sum(draw => draw.Weighed.Milligrams),
            })
            .AsEnumerable()
            .Where(filling => filling.Lean > 0)
            .Select(filling => new LugInReach(filling.JobId, filling.Number, shop.Print(Weight.FromMilligrams(Math.Max(0, filling.Lean - filling.Drawn)))))
            .ToLookup(lug => lug.JobId);

    /// <summary>An owner's lean for this load: planned, drawn, and the lugs it lies in.</summary>
    public sealed record Wanted(BatchEntry Entry, Weight Planned, Weight Drawn, IReadOnlyList<LugInReach> Lugs)
    {
        public Weight Still => Weight.Max(Weight.Zero, Planned - Drawn);

        /// <summary>Less than planned is in, and every lug is empty: thaw and drip took the rest, or it went elsewhere.</summary>
        public bool IsAllThereIs => Still.IsPositive && Drawn.IsPositive && Lugs.Count == 0;
    }

    /// <summary>Meat drawn, with the initials of whose hand it was.</summary>
    public sealed record Drawn(Draw Draw, string By, string? StruckBy);

    /// <param name="Left">What is in it by its weigh-in and what was drawn.</param>
    public sealed record LugInReach(int JobId, int Number, string Left);
}
