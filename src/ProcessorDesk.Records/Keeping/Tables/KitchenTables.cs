using Microsoft.EntityFrameworkCore;

namespace ProcessorDesk.Records;

internal static class KitchenTables
{
    public static void Map(ModelBuilder model)
    {
        model.Entity<Batch>(batch =>
        {
            batch.HasIndex(b => b.Number).IsUnique();
            batch.HasIndex(b => b.PlannedAt, "IX_Batches_Open").HasFilter("ReleasedAt IS NULL AND EndedAt IS NULL");
            batch.HasIndex(b => b.ReleasedAt);
            batch.HasOne(b => b.Product).WithMany().OnDelete(DeleteBehavior.Restrict);
            batch.HasOne(b => b.FormulaVersion).WithMany().OnDelete(DeleteBehavior.Restrict);
            batch.HasMany(b => b.Entries).WithOne(entry => entry.Batch).OnDelete(DeleteBehavior.Restrict);
            batch.HasMany(b => b.Loads).WithOne(load => load.Batch).OnDelete(DeleteBehavior.Restrict);
            batch.Ignore(b => b.Stage);
        });
        model.Entity<BatchEntry>(entry =>
        {
            entry.HasIndex(e => e.AllotmentId, "IX_BatchEntries_Standing").IsUnique().HasFilter("LeftAt IS NULL");
            entry.HasOne(e => e.Allotment).WithMany().OnDelete(DeleteBehavior.Restrict);
            entry.HasOne(e => e.Job).WithMany().OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<Load>(load =>
        {
            load.HasIndex(l => new { l.BatchId, l.Number }).IsUnique();
            load.HasMany(l => l.Parts).WithOne(part => part.Load).OnDelete(DeleteBehavior.Restrict);
            load.HasMany(l => l.Draws).WithOne(draw => draw.Load).OnDelete(DeleteBehavior.Restrict);
            load.HasMany(l => l.Ingredients).WithOne().HasForeignKey(line => line.LoadId).OnDelete(DeleteBehavior.Restrict);
            load.Ignore(l => l.PlannedBlock);
            load.Ignore(l => l.Drawn);
            load.Ignore(l => l.WeighedBlock);
        });
        model.Entity<LoadPart>(part =>
        {
            part.HasKey(p => new { p.LoadId, p.EntryId });
            part.HasOne(p => p.Entry).WithMany().OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<LoadIngredient>().HasKey(line => new { line.LoadId, line.Position });
        model.Entity<Draw>(draw =>
        {
            draw.HasOne(d => d.Filling).WithMany().OnDelete(DeleteBehavior.Restrict);
            draw.HasOne(d => d.Entry).WithMany().OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<BatchStep>(step =>
        {
            step.HasIndex(s => s.BatchId);
            step.HasIndex(s => new { s.BatchId, s.Kind }, "IX_BatchSteps_Standing").IsUnique().HasFilter("UndoneAt IS NULL");
            step.HasOne(s => s.Batch).WithMany().OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<BatchReading>(reading =>
        {
            reading.HasIndex(r => new { r.BatchId, r.TakenAt });
            reading.HasOne<Batch>().WithMany().HasForeignKey(r => r.BatchId).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<FinishedShare>(share =>
        {
            share.HasOne(s => s.Entry).WithMany().OnDelete(DeleteBehavior.Restrict);
            share.HasOne<Load>().WithMany().HasForeignKey(s => s.LoadId).OnDelete(DeleteBehavior.Restrict);
        });
    }
}
