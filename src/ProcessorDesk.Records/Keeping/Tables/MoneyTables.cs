using Microsoft.EntityFrameworkCore;

namespace ProcessorDesk.Records;

internal static class MoneyTables
{
    public static void Map(ModelBuilder model)
    {
        model.Entity<PriceList>(list =>
        {
            list.Property(l => l.Version).IsConcurrencyToken();
            list.HasIndex(l => l.StartsOn);
            list.HasMany(l => l.Prices).WithOne().HasForeignKey(price => price.PriceListId);
        });
        model.Entity<Price>(price =>
        {
            price.Ignore(p => p.Each);
            price.Ignore(p => p.Rate);
            price.HasOne<Product>().WithMany().HasForeignKey(p => p.ProductId).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<Invoice>(invoice =>
        {
            invoice.HasIndex(i => i.Number).IsUnique();
            // Without those that credit nothing: SQLite takes a unique index for one row, and would read every standing invoice through it.
            invoice.HasIndex(i => i.CreditsInvoiceId).IsUnique().HasFilter("CreditsInvoiceId IS NOT NULL");
            invoice.HasOne(i => i.Job).WithMany().OnDelete(DeleteBehavior.Restrict);
            invoice.HasOne(i => i.Credits).WithOne().HasForeignKey<Invoice>(i => i.CreditsInvoiceId).OnDelete(DeleteBehavior.Restrict);
            invoice.HasMany(i => i.Lines).WithOne().HasForeignKey(line => line.InvoiceId);
        });
        model.Entity<InvoiceLine>().HasKey(line => new { line.InvoiceId, line.Position });
        model.Entity<Payment>().HasOne(payment => payment.Job).WithMany().OnDelete(DeleteBehavior.Restrict);
    }
}
