using Microsoft.EntityFrameworkCore;

namespace ProcessorDesk.Records;

internal static class GrindTables
{
    public static void Map(ModelBuilder model)
    {
        model.Entity<Product>(product =>
        {
            product.Property(p => p.Version).IsConcurrencyToken();
            product.HasIndex(p => p.Name).IsUnique();
            product.HasIndex(p => p.IsPlainGround, "IX_Products_PlainGround").IsUnique().HasFilter("IsPlainGround");
            product.HasMany(p => p.Formulas).WithOne(formula => formula.Product).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<FormulaVersion>(formula =>
        {
            formula.HasIndex(f => new { f.ProductId, f.Number }).IsUnique();
            formula.HasMany(f => f.Ingredients).WithOne().HasForeignKey(line => line.FormulaVersionId);
            formula.HasOne(f => f.AddedFatIngredient).WithMany().OnDelete(DeleteBehavior.Restrict);
            formula.HasOne(f => f.CasingIngredient).WithMany().OnDelete(DeleteBehavior.Restrict);
            formula.Ignore(f => f.Additions);
        });
        model.Entity<FormulaIngredient>(line =>
        {
            line.HasKey(l => new { l.FormulaVersionId, l.Position });
            line.Property(l => l.AllergenWords).HasColumnName("Allergens");
            line.HasOne(l => l.Ingredient).WithMany().OnDelete(DeleteBehavior.Restrict);
            line.Ignore(l => l.OfMeatBlock);
        });
        model.Entity<AgreedSplit>(split =>
        {
            split.HasIndex(s => s.JobId, "IX_AgreedSplits_Standing").IsUnique().HasFilter("WithdrawnAt IS NULL");
            split.HasOne<Job>().WithMany().HasForeignKey(s => s.JobId).OnDelete(DeleteBehavior.Restrict);
            split.HasMany(s => s.Allotments).WithOne().HasForeignKey(one => one.AgreedSplitId);
        });
        model.Entity<GrindAllotment>(one =>
        {
            one.HasOne(a => a.Product).WithMany().OnDelete(DeleteBehavior.Restrict);
            one.HasOne(a => a.FormulaVersion).WithMany().OnDelete(DeleteBehavior.Restrict);
        });
    }
}
