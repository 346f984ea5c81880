using ProcessorDesk.Records;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Seasons.Tests.Generating;

/// <summary>Every week of a season a lot of each ingredient comes in, and the one before it is used up.</summary>
internal sealed class InTheLarder(Season season)
{
    private const int DaysAfter = 60;

    private readonly Dictionary<int, IngredientLot> _open = [];

    public void Expect(DateOnly begins, DateOnly last)
    {
        for (var day = begins; day <= last; day = day.AddDays(7))
            season.Plan(Morning(day), "receive a lot", StaffRole.Kitchen, "Kitchen", Receive);
        season.Plan(Morning(last.AddDays(DaysAfter)), "use a lot up", StaffRole.Kitchen, "Kitchen", () =>
        {
            foreach (var lot in _open.Values)
                UseUp(lot);
            _open.Clear();
        });
    }

    /// <summary>The lot of an ingredient that is open.</summary>
    public IngredientLot OpenLot(int ingredientId) => _open[ingredientId];

    /// <summary>Notes what of the open lots went into a load that is mixed.</summary>
    public void Use(Load load, FormulaVersion formula)
    {
        foreach (var line in formula.Ingredients)
            Note(load, line.Position, line.IngredientId!.Value, load.Ingredients.Single(one => one.Position == line.Position).Weighed, 0);
        if (formula.AddedFatIngredientId is { } fat)
            Note(load, null, fat, load.AddedFat, 0);
        if (formula is { CasingIngredientId: { } casing, CasingHolds: { } holds })
            Note(load, null, casing, Weight.Zero, checked((int)(load.Green.Milligrams / holds.Milligrams) + 1));
    }

    private void Receive()
    {
        foreach (var ingredient in season.Floor.Ingredients)
        {
            if (_open.TryGetValue(ingredient.Id, out var before))
                UseUp(before);
            var isMeat = ingredient.Kind == IngredientKind.Meat;
            var lot = new IngredientLot(
                new LotReceipt(
                    ingredient.Id, $"{ingredient.Name[..1]}-{season.Now:yyMMdd}", DateOnly.FromDateTime(season.Now), ingredient.GoesByPiece ? Weight.Zero : Weight.FromPounds(40_000m),
                    ingredient.GoesByPiece ? 100_000 : 0, ingredient.Nitrite, ingredient.Nitrate, "Example Supply", isMeat ? "Est. 00000" : null),
                season.Now, season.Hand.Id);
            season.Add(lot);
            _open[ingredient.Id] = lot;
        }
    }

    private void UseUp(IngredientLot lot)
    {
        lot.UseUp(season.Now, season.Hand.Id);
        season.Changed(lot);
    }

    private void Note(Load load, int? position, int ingredient, Weight amount, int pieces)
    {
        if (amount.IsPositive || pieces > 0)
            season.Add(new LotUse(load.Id, OpenLot(ingredient).Id, position, amount, pieces, season.Now, season.Hand.Id));
    }

    private static DateTime Morning(DateOnly day) => day.ToDateTime(new TimeOnly(12, 30), DateTimeKind.Utc);
}
