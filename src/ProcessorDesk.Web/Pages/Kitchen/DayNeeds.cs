using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Formulas;
using ProcessorDesk.Trade.Kitchen;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>What the day takes beside the owners' lean: to thaw, to buy in, to weigh, to soak.</summary>
/// <param name="OnHand">Of its open lots; empty where the larder keeps none of it, as of water.</param>
/// <param name="IsShort">Less on hand than the day takes.</param>
public sealed record DayNeeds(string What, string Wanted, string OnHand, bool IsShort)
{
    /// <summary>One query, for what is on hand. Added fat and casings first, then by name.</summary>
    public static IReadOnlyList<DayNeeds> Of(DayLoads day, DayQuestion question, RecordsContext records, ShopDay shop)
    {
        var wanted = day.Batches.SelectMany(batch => OfBatch(batch, question, shop)).ToList();
        var onHand = records.IngredientLots.Open().OnHand(records).ToLookup(lot => lot.IngredientId);
        return
        [
            .. from need in wanted
               group need by (need.Ingredient, need.Name, need.Rank) into needs
               orderby needs.Key.Rank, needs.Key.Name
               select needs.Key.Rank == Rank.Casing ? Counted(needs.Key.Name, needs.Sum(need => need.Pieces), Lots(needs.Key.Ingredient))
                   : Weighed(needs.Key.Name, needs.Aggregate(Weight.Zero, (sum, need) => sum + need.Amount), Lots(needs.Key.Ingredient), needs.Key.Rank, shop)
        ];

        IReadOnlyList<LotOnHand>? Lots(int? ingredient) => ingredient is { } id ? [.. onHand[id]] : null;
    }

    private static IEnumerable<Need> OfBatch(DayLoads.Batch batch, DayQuestion question, ShopDay shop)
    {
        var formula = question.Formulas[batch.Product.Key];
        foreach (var load in Arranged(batch, question))
        {
            if (load.AddedFat.IsPositive)
                yield return new Need(formula.AddedFatIngredientId, formula.AddedFat ?? "Added fat", Rank.Fat, load.AddedFat, 0);
            if (formula.CasingsFor(load.Green) is > 0 and var casings)
                yield return new Need(formula.CasingIngredientId, formula.Casing!, Rank.Casing, Weight.Zero, casings);
            var scaled = FormulaScaling.Scale(formula.ToTrade(), load.MeatBlock, shop.Settings.CureDivision);
            foreach (var (line, amount) in formula.Ingredients.OrderBy(line => line.Position).Zip(scaled.Lines))
                yield return new Need(line.Kind == IngredientKind.Water ? null : line.IngredientId, line.Name, Rank.Line, amount.Amount, 0);
        }
    }

    private static IEnumerable<MixerLoad> Arranged(DayLoads.Batch batch, DayQuestion question)
    {
        List<int> ids = [.. batch.Loads.SelectMany(load => load.Pieces).Select(piece => piece.Allotment).Distinct()];
        return MixerLoads.Arrange(
            [.. ids.Select(id => question.MeatOf(id).Part)],
            [.. batch.Loads.Select(load => load.Pieces.Select(piece => (ids.IndexOf(piece.Allotment), piece.Green)).ToList())],
            question.Settings.Division);
    }

    private static DayNeeds Counted(string name, long pieces, IReadOnlyList<LotOnHand>? lots) => new(
        name, $"{pieces:N0} to soak", lots is null ? "" : $"{lots.Sum(lot => lot.PiecesLeft):N0}", lots is not null && lots.Sum(lot => lot.PiecesLeft) < pieces);

    private static DayNeeds Weighed(string name, Weight amount, IReadOnlyList<LotOnHand>? lots, Rank rank, ShopDay shop)
    {
        var left = lots?.Aggregate(Weight.Zero, (sum, lot) => sum + lot.Left);
        return new DayNeeds(name, rank == Rank.Fat ? shop.Print(amount) : Small(amount), left is { } there ? shop.Print(there) : "", left < amount);

        // A cure or a spice is weighed on the small scale; the shelf is counted in pounds.
        string Small(Weight weight) => $"{shop.Settings.CureDivision.Print(weight)} ({shop.Print(weight)})";
    }

    private enum Rank
    {
        Fat,
        Casing,
        Line,
    }

    private sealed record Need(int? Ingredient, string Name, Rank Rank, Weight Amount, long Pieces);
}
