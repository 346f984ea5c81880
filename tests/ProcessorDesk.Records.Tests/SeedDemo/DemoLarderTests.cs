using Microsoft.EntityFrameworkCore;
using Xunit;

namespace ProcessorDesk.Records.Tests.SeedDemo;

/// <summary>The demo's larder.</summary>
[Collection(DemoShelf.Name)]
public sealed class DemoLarderTests(DemoFile demo)
{
    [Fact]
    public void One_ingredient_is_low_and_a_lot_of_salt_is_used_up()
    {
        using var records = demo.Open();
        var lots = records.IngredientLots.Open().OnHand(records).ToLookup(lot => lot.IngredientId);

        Assert.Equal("Mustard seed", Assert.Single(records.Ingredients.AsEnumerable(), one => one.IsLow(lots[one.Id])).Name);
        Assert.Contains(records.IngredientLots.Include(lot => lot.Ingredient), lot => lot.Ingredient.Name == "Salt" && lot.UsedUpAt != null);
    }

    [Fact]
    public void Every_load_is_made_of_lots_that_were_on_the_shelf_and_had_enough_left()
    {
        using var records = demo.Open();
        var loads = records.Loads.Include(load => load.LotUses).ThenInclude(use => use.Lot).Include(load => load.Batch.FormulaVersion.Ingredients)
            .Where(load => load.MixedAt != null && load.Batch.Product.IsPlainGround == false).AsSplitQuery().ToList();

        Assert.NotEmpty(loads);
        Assert.All(loads, load =>
        {
            Assert.Contains(load.LotUses, use => use.Position is null && use.Lot.IngredientId == load.Batch.FormulaVersion.AddedFatIngredientId);
            Assert.All(load.Batch.FormulaVersion.Ingredients.Where(line => line.Kind != IngredientKind.Water), line => Assert.Contains(load.LotUses, use => use.Position == line.Position));
            Assert.All(load.LotUses, use => Assert.True(use.Lot.At <= use.At && (use.Lot.UsedUpAt is null || use.Lot.UsedUpAt > use.At)));
        });
        Assert.All(records.IngredientLots.OnHand(records), lot => Assert.True(lot.Left >= Trade.Weight.Zero && lot.PiecesLeft >= 0));
    }
}
