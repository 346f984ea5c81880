using Microsoft.EntityFrameworkCore;

namespace ProcessorDesk.Records;

internal static class AnimalTables
{
    public static void Map(ModelBuilder model)
    {
        model.Entity<Animal>(animal =>
        {
            animal.Property(a => a.Version).IsConcurrencyToken();
            animal.HasIndex(a => a.TagKey);
            animal.HasIndex(a => a.HungAt);
            animal.Ignore(a => a.SharesSum);
            animal.Ignore(a => a.AwaitsResult);
            animal.Ignore(a => a.IsWhollyShared);
            animal.HasMany(a => a.Holds).WithOne(hold => hold.Animal).HasForeignKey(hold => hold.AnimalId).OnDelete(DeleteBehavior.Restrict);
            animal.HasMany(a => a.Parts).WithOne(part => part.Animal).HasForeignKey(part => part.AnimalId).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<Share>(share =>
        {
            share.HasIndex(s => new { s.AnimalId, s.JobId }).IsUnique();
            share.HasOne(s => s.Animal).WithMany(a => a.Shares).OnDelete(DeleteBehavior.Restrict);
            share.HasOne(s => s.Job).WithMany(j => j.Shares).OnDelete(DeleteBehavior.Restrict);
            share.Ignore(s => s.Fraction);
        });
        model.Entity<Hold>(hold =>
        {
            hold.HasOne(h => h.Job).WithMany().HasForeignKey(h => h.JobId).OnDelete(DeleteBehavior.Restrict);
            hold.HasOne(h => h.Batch).WithMany().HasForeignKey(h => h.BatchId).OnDelete(DeleteBehavior.Restrict);
            hold.HasIndex(h => h.PlacedAt, "IX_Holds_Standing").HasFilter("ReleasedAt IS NULL");
        });
        model.Entity<Part>().HasOne(part => part.HandOver).WithMany().HasForeignKey(part => part.HandOverId).OnDelete(DeleteBehavior.Restrict);
        model.Entity<HoldRule>().HasKey(rule => new { rule.Reason, rule.Act });
        model.Entity<ChecklistTick>(tick =>
        {
            tick.HasKey(t => new { t.AnimalId, t.Item });
            tick.HasOne<Animal>().WithMany().HasForeignKey(t => t.AnimalId).OnDelete(DeleteBehavior.Restrict);
        });
    }
}
