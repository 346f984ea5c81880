using Microsoft.EntityFrameworkCore;

namespace ProcessorDesk.Records;

internal static class TracingTables
{
    public static void Map(ModelBuilder model) => model.Entity<OwnerCall>(call =>
    {
        call.HasIndex(c => new { c.JobId, c.About, c.AboutId });
        call.HasOne(c => c.Job).WithMany().OnDelete(DeleteBehavior.Restrict);
    });
}
