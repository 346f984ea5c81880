using ProcessorDesk.Paper;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Curing;
using ProcessorDesk.Trade.Formulas;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>The loads of a batch as its sheet prints them: on the meat as planned, with what is in the mixer after each line.</summary>
internal static class SheetLoad
{
    public static IReadOnlyList<BatchLoad> Of(Batch batch, IReadOnlyList<SheetLug> lugs, ShopSettings shop)
    {
        var free = lugs.ToDictionary(lug => lug, lug => lug.FreeMilligrams);
        return [.. batch.Loads.OrderBy(load => load.Number).Select(load => Of(load, free, shop))];
    }

    private static BatchLoad Of(Load load, Dictionary<SheetLug, long> free, ShopSettings shop)
    {
        var (bench, small, formula) = (shop.BenchDivision, shop.CureDivision, load.Batch.FormulaVersion);
        var scaled = FormulaScaling.Scale(formula.ToTrade(), load.PlannedBlock, small);
        var left = scaled.Lines.Count;
        var inMixer = Weight.Zero;
        // The last line says what the load was planned to come to: the parts were rounded, each by itself, to the small scale.
        string Then(Weight more, bool isLine = false) => bench.Print((inMixer += more) is var now && isLine && --left == 0 ? load.Green : now);

        List<BatchMeat> meat = [];
        foreach (var part in load.Parts.OrderBy(part => part.EntryId))
        {
            foreach (var (lug, weight) in FromLugs(part, free))
                meat.Add(new BatchMeat(part.Entry.Job.Owner.Name, $"{part.Entry.Job.Number}", lug, bench.Print(weight), Then(weight)));
        }

        var fat = load.AddedFat.IsPositive ? new BatchFat(formula.AddedFat ?? "added fat", bench.Print(load.AddedFat), Then(load.AddedFat)) : null;
        var others = scaled.Lines.Where(line => !line.Line.HoldsCure).Select(line => new BatchIngredient(line.Line.Name, line.Grams, line.PoundsAndOunces, Then(line.Amount, isLine: true))).ToList();
        var cures = scaled.Lines.Where(line => line.Line.HoldsCure).Select(line => new BatchCureLine(
            line.Line.Name, Strength(line.Line), line.Grams, line.PoundsAndOunces,
            small.Print(ComminutedCure.Most(load.PlannedBlock, line.Line.Nitrite, line.Line.Nitrate, small)), Then(line.Amount, isLine: true))).ToList();
        return new BatchLoad(meat, fat is null ? [] : [fat], bench.Print(load.PlannedBlock), others, cures.Count == 0 ? null : new BatchCure(cures, Figures(scaled.Cure!)), bench.Print(load.Green));
    }

    /// <summary>Takes the lean from the owner's lugs in the order they were filled; a line without a lug where they do not reach.</summary>
    private static List<(string Lug, Weight Weight)> FromLugs(LoadPart part, Dictionary<SheetLug, long> free)
    {
        var taken = new List<(string, Weight)>();
        var wanted = part.Lean.Milligrams;
        foreach (var lug in free.Keys.Where(lug => lug.JobId == part.Entry.JobId).ToList())
        {
            var now = Math.Min(wanted, free[lug]);
            if (now <= 0)
                continue;
            taken.Add(($"{lug.Number}", Weight.FromMilligrams(now)));
            (wanted, free[lug]) = (wanted - now, free[lug] - now);
        }

        if (wanted > 0)
            taken.Add(("", Weight.FromMilligrams(wanted)));
        return taken;
    }

    private static string Strength(FormulaLine line) => string.Join(", ", new[]
    {
        line.Nitrite.IsZero ? null : $"{line.Nitrite.Print()} nitrite",
        line.Nitrate.IsZero ? null : $"{line.Nitrate.Print()} nitrate",
    }.OfType<string>());

    private static List<BatchCureFigure> Figures(CureCheck check) =>
    [
        new("nitrite", check.NitriteText, $"{PpmText.Print(CureLimits.ComminutedNitrite)} ({CureLimits.ComminutedNitrite.AsPrinted})", CureLimits.ComminutedNitrite.Source),
        .. check.NitratePpm > 0
            ? [new BatchCureFigure("nitrate", check.NitrateText, $"{PpmText.Print(CureLimits.ComminutedNitrate)} ({CureLimits.ComminutedNitrate.AsPrinted})", CureLimits.ComminutedNitrate.Source)]
            : Array.Empty<BatchCureFigure>(),
    ];
}
