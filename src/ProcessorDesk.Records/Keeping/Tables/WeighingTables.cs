using Microsoft.EntityFrameworkCore;

namespace ProcessorDesk.Records;

internal static class WeighingTables
{
    public static void Map(ModelBuilder model)
    {
        model.Entity<Lug>(lug =>
        {
            lug.Property(l => l.Version).IsConcurrencyToken();
            lug.HasIndex(l => l.Number).IsUnique();
        });
        model.Entity<Filling>(filling =>
        {
            filling.HasIndex(f => f.LugId, "IX_Fillings_LugId");
            filling.HasIndex(f => f.LugId, "IX_Fillings_Open").IsUnique().HasFilter("EmptiedAt IS NULL");
            filling.HasOne(f => f.Lug).WithMany().OnDelete(DeleteBehavior.Restrict);
            filling.HasOne(f => f.Job).WithMany().OnDelete(DeleteBehavior.Restrict);
            filling.HasMany(f => f.Animals).WithOne().HasForeignKey(one => one.FillingId);
        });
        model.Entity<FillingAnimal>(one =>
        {
            one.HasKey(a => new { a.FillingId, a.AnimalId });
            one.HasOne(a => a.Animal).WithMany().OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<WeighIn>(weighIn =>
        {
            weighIn.HasOne(w => w.Animal).WithMany().OnDelete(DeleteBehavior.Restrict);
            weighIn.HasOne(w => w.Job).WithMany().OnDelete(DeleteBehavior.Restrict);
            weighIn.HasOne(w => w.Filling).WithMany().OnDelete(DeleteBehavior.Restrict);
            weighIn.HasOne(w => w.Batch).WithMany().OnDelete(DeleteBehavior.Restrict);
            weighIn.HasOne<Load>().WithMany().HasForeignKey(w => w.LoadId).OnDelete(DeleteBehavior.Restrict);
            weighIn.HasOne(w => w.Strike).WithOne().HasForeignKey<Strike>(strike => strike.WeighInId).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<Strike>(strike =>
        {
            strike.HasKey(s => s.WeighInId);
            strike.HasIndex(s => s.At);
            strike.Property(s => s.WeighInId).ValueGeneratedNever();
        });
    }
}
