using Microsoft.EntityFrameworkCore;

namespace ProcessorDesk.Records;

internal static class JobTables
{
    public static void Map(ModelBuilder model)
    {
        model.Entity<Job>(job =>
        {
            job.Property(j => j.Version).IsConcurrencyToken();
            job.HasIndex(j => j.Number).IsUnique();
            job.HasIndex(j => new { j.OwnerId, j.TakenAt });
            job.HasIndex(j => j.PromisedFor, "IX_Jobs_Open").HasFilter("HandedOverAt IS NULL");
            job.HasIndex(j => j.TakenAt);
            job.HasIndex(j => j.HandedOverAt);
            job.Ignore(j => j.Stage);
            job.HasOne(j => j.Owner).WithMany().OnDelete(DeleteBehavior.Restrict);
            job.HasOne(j => j.PriceList).WithMany().OnDelete(DeleteBehavior.Restrict);
            job.HasMany(j => j.CutOrder).WithOne().HasForeignKey(line => line.JobId);
            job.HasMany(j => j.Asks).WithOne().HasForeignKey(ask => ask.JobId);
            job.HasMany(j => j.People).WithOne().HasForeignKey(person => person.JobId);
        });
        model.Entity<JobPerson>().HasIndex(person => new { person.JobId, person.Role }).IsUnique();
        model.Entity<CutOrderLine>().HasKey(line => new { line.JobId, line.Position });
        model.Entity<GrindOrder>(ask =>
        {
            ask.HasKey(a => new { a.JobId, a.Position });
            ask.HasOne(a => a.Product).WithMany().OnDelete(DeleteBehavior.Restrict);
        });
    }
}
