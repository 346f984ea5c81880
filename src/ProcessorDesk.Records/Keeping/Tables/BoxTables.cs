using Microsoft.EntityFrameworkCore;

namespace ProcessorDesk.Records;

internal static class BoxTables
{
    public static void Map(ModelBuilder model)
    {
        model.Entity<Box>(box =>
        {
            box.HasIndex(b => new { b.JobId, b.Number }).IsUnique();
            box.HasOne(b => b.Job).WithMany().OnDelete(DeleteBehavior.Restrict);
            box.HasOne(b => b.Weighed).WithMany().HasForeignKey(b => b.WeighedId).OnDelete(DeleteBehavior.Restrict);
            box.HasOne(b => b.HandOver).WithMany().HasForeignKey(b => b.HandOverId).OnDelete(DeleteBehavior.Restrict);
            box.HasMany(b => b.Contents).WithOne().HasForeignKey(content => content.BoxId).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<BoxContent>(content =>
        {
            content.HasKey(c => new { c.BoxId, c.Position });
            content.HasOne<GrindAllotment>().WithMany().HasForeignKey(c => c.AllotmentId).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<HandOver>(handOver =>
        {
            handOver.HasIndex(h => h.At);
            handOver.HasOne(h => h.Job).WithMany().OnDelete(DeleteBehavior.Restrict);
        });
    }
}
