using Microsoft.EntityFrameworkCore;

namespace ProcessorDesk.Records;

internal static class LarderTables
{
    public static void Map(ModelBuilder model)
    {
        model.Entity<Ingredient>(ingredient =>
        {
            ingredient.Property(i => i.Version).IsConcurrencyToken();
            ingredient.HasIndex(i => i.Name).IsUnique();
            ingredient.Ignore(i => i.Price);
        });
        model.Entity<IngredientLot>(lot =>
        {
            lot.HasIndex(l => new { l.IngredientId, l.ReceivedOn });
            lot.HasIndex(l => new { l.IngredientId, l.ReceivedOn }, "IX_IngredientLots_Open").HasFilter("UsedUpAt IS NULL AND StruckAt IS NULL");
            lot.HasIndex(l => l.LotCode);
            lot.HasIndex(l => l.ReceivedOn);
            lot.HasOne(l => l.Ingredient).WithMany().OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<LotUse>(use =>
        {
            use.HasOne(u => u.Load).WithMany(load => load.LotUses).OnDelete(DeleteBehavior.Restrict);
            use.HasOne(u => u.Lot).WithMany().OnDelete(DeleteBehavior.Restrict);
        });
    }
}
