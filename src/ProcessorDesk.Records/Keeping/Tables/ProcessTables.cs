using Microsoft.EntityFrameworkCore;

namespace ProcessorDesk.Records;

internal static class ProcessTables
{
    public static void Map(ModelBuilder model)
    {
        model.Entity<BatchRules>(rules =>
        {
            rules.HasKey(r => r.BatchId);
            rules.HasOne<Batch>().WithOne(batch => batch.Rules).HasForeignKey<BatchRules>(r => r.BatchId).OnDelete(DeleteBehavior.Restrict);
            rules.Ignore(r => r.CookingGap);
            rules.Ignore(r => r.ChillingGap);
        });
        model.Entity<Batch>().Ignore(batch => batch.RulesInForce);
        model.Entity<StuffedPieces>(pieces =>
        {
            pieces.HasKey(p => new { p.StepId, p.LoadId });
            pieces.HasOne(p => p.Step).WithMany().OnDelete(DeleteBehavior.Restrict);
            pieces.HasOne<Load>().WithMany().HasForeignKey(p => p.LoadId).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<Disposition>().HasOne<Batch>().WithMany().HasForeignKey(one => one.BatchId).OnDelete(DeleteBehavior.Restrict);
    }
}
