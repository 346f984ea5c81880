using Microsoft.AspNetCore.Mvc.ModelBinding;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Curing;
using ProcessorDesk.Trade.Formulas;
using ProcessorDesk.Web.Forms;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>What a load asks for on the meat as weighed, and what was typed of it so far.</summary>
/// <param name="Block">Lean drawn and added fat: as typed, or as planned where nothing is typed yet.</param>
/// <param name="Lines">In the order of the formula.</param>
/// <param name="Cure">The check on the cure as typed; null where none is typed, or the product is not cured.</param>
public sealed record MixSheet(Weight Lean, Weight Fat, Weight Block, IReadOnlyList<MixSheet.Line> Lines, CureCheck? Cure)
{
    public static string Limit { get; } = $"{PpmText.Print(CureLimits.ComminutedNitrite)} nitrite ({CureLimits.ComminutedNitrite.AsPrinted})";

    /// <summary>Works the formula out for what is weighed. Fat that can't be read counts as planned.</summary>
    public static MixSheet Of(Load load, MixInput input, ShopSettings shop, LoadLots lots)
    {
        var fat = input.Fat.Trim() == "" || !WeightText.Parse(input.Fat, shop.BenchDivision.Unit).Try(out var typed, out _) ? load.AddedFat : shop.BenchDivision.Round(typed);
        var block = load.Drawn + fat;
        var small = shop.CureDivision;
        var scaled = FormulaScaling.Scale(load.Batch.FormulaVersion.ToTrade(), block, small);
        List<Line> lines =
        [
            .. load.Batch.FormulaVersion.Ingredients.OrderBy(line => line.Position).Zip(scaled.Lines, (line, asked) =>
            {
                var typed = input.Lines.FirstOrDefault(one => one.Position == line.Position);
                var text = typed?.Weighed.Trim() ?? "";
                var lot = lots.Find(line.IngredientId, typed?.Lot ?? "");
                var (nitrite, nitrate) = (lot?.Nitrite ?? line.Nitrite, lot?.Nitrate ?? line.Nitrate);
                var isCure = !nitrite.IsZero || !nitrate.IsZero;
                return new Line(
                    line.Position, line.IngredientId, line.Name, isCure, line.InMeatBlock, lot, asked.Amount, asked.Grams, asked.PoundsAndOunces,
                    text != "" && WeightText.Parse(text, small.Unit).Try(out var weighed, out _) ? weighed : null, WeightText.UnitOf(text, small.Unit),
                    WeightText.Parse(typed?.Again ?? "", small.Unit).Try(out var again, out _) ? again : null,
                    nitrite, nitrate, isCure ? small.Print(ComminutedCure.Most(block, nitrite, nitrate, small)) : "");
            }),
        ];
        var cures = lines.Where(line => line is { IsCure: true, Weighed: not null }).ToList();
        var meat = lines.Where(line => line.InMeatBlock).Aggregate(block, (sum, line) => sum + (line.Weighed ?? line.Asked));
        return new MixSheet(load.Drawn, fat, block, lines, cures.Count == 0 ? null : ComminutedCure.Check(meat, [.. cures.Select(line => line.ToCure())]));
    }

    public IEnumerable<Line> Cures => Lines.Where(line => line.IsCure);

    public IEnumerable<Line> Others => Lines.Where(line => !line.IsCure);

    /// <summary>The order this makes; null where something can't be read or is not typed, which is noted on its field.</summary>
    /// <param name="againBy">Whose hand weighed the cure again; null for the hand that mixes.</param>
    public MixOrder? Read(ModelStateDictionary state, Load load, MixInput input, ShopSettings shop, LoadLots lots, bool alreadyIn, int? againBy)
    {
        var fat = Weight.Zero;
        if (input.Fat.Trim() != "")
            fat = shop.BenchDivision.Round(state.Read(WeightText.Parse(input.Fat, shop.BenchDivision.Unit), "Mix.Fat"));
        else if (load.AddedFat.IsPositive)
            state.AddModelError("Mix.Fat", $"Type what was weighed in of {load.Batch.FormulaVersion.AddedFat ?? "the added fat"}.");
        var (weighed, again) = (new Dictionary<int, (Weight, WeightUnit)>(), new Dictionary<int, (Weight, WeightUnit)>());
        foreach (var line in Lines)
        {
            var place = input.Lines.FindIndex(one => one.Position == line.Position);
            var field = FormattableString.Invariant($"Mix.Lines[{place}].Weighed");
            var text = place < 0 ? "" : input.Lines[place].Weighed.Trim();
            if (line.Cures && input.Lines[place].Again.Trim() is { Length: > 0 } second)
                again[line.Position] = (state.Read(WeightText.Parse(second, shop.CureDivision.Unit), FormattableString.Invariant($"Mix.Lines[{place}].Again")), WeightText.UnitOf(second, shop.CureDivision.Unit));
            if (text != "")
                weighed[line.Position] = (state.Read(WeightText.Parse(text, shop.CureDivision.Unit), field), line.KeyedIn);
            else if (line.IsCure)
                state.AddModelError(field, $"Weigh the {line.Name.ToLowerInvariant()} and type what the small scale shows.");
            else if (input.AsAsked)
                weighed[line.Position] = (line.Asked, shop.CureDivision.Unit);
            else
                state.AddModelError("Mix.AsAsked", $"Tick this, or type what was weighed in of {line.Name.ToLowerInvariant()}; 0 where it was left out.");
        }

        return !state.IsValid ? null : new MixOrder(load.Id, fat, weighed, input.LowCureBecause.Trim() == "" ? null : input.LowCureBecause, alreadyIn ? input.AlreadyInBecause : null)
        {
            Again = again,
            AgainById = againBy,
            Lots = Lines.Where(line => line.Lot is not null).ToDictionary(line => line.Position, line => line.Lot!.Id),
            FatLotId = lots.Find(load.Batch.FormulaVersion.AddedFatIngredientId, input.FatLot)?.Id,
            CasingLotId = lots.Find(load.Batch.FormulaVersion.CasingIngredientId, input.CasingLot)?.Id,
        };
    }

    /// <summary>One line of the formula.</summary>
    /// <param name="IsCure">It holds nitrite or nitrate, by the label of its lot where one is chosen.</param>
    /// <param name="Lot">The lot chosen; null where none is noted.</param>
    /// <param name="Asked">On the small scale's division; a cure rounded down.</param>
    /// <param name="Weighed">As typed; null where it is not.</param>
    /// <param name="Again">The second weighing of a cure as typed; null where it is not.</param>
    /// <param name="Most">The most of a cure that meets the limit; empty for all else.</param>
    public sealed record Line(
        int Position, int? IngredientId, string Name, bool IsCure, bool InMeatBlock, LotOnHand? Lot, Weight Asked, string Grams, string PoundsAndOunces,
        Weight? Weighed, WeightUnit KeyedIn, Weight? Again, Proportion Nitrite, Proportion Nitrate, string Most)
    {
        /// <summary>Weighed twice: it cures, and is no meat that was cured before.</summary>
        public bool Cures => IsCure && !InMeatBlock;

        public CureAmount ToCure() => new(Name, Weighed ?? Weight.Zero, Nitrite, Nitrate, KeyedIn);
    }
}
