using Microsoft.EntityFrameworkCore;

namespace ProcessorDesk.Records;

internal static class ShopTables
{
    public static void Map(ModelBuilder model)
    {
        model.Entity<ShopSettings>(shop =>
        {
            shop.ToTable("Shop");
            shop.Property(s => s.Id).ValueGeneratedNever();
            shop.Property(s => s.Version).IsConcurrencyToken();
        });
        model.Entity<Staff>(staff =>
        {
            staff.Property(s => s.Version).IsConcurrencyToken();
            staff.HasIndex(s => s.Initials).IsUnique();
        });
        model.Entity<Ticket>(ticket =>
        {
            ticket.HasKey(t => t.Number);
            ticket.Property(t => t.Number).ValueGeneratedNever();
            ticket.HasIndex(t => new { t.Kind, t.TargetId });
            ticket.Ignore(t => t.Code);
        });
        model.Entity<Counter>().HasKey(counter => counter.Name);
        model.Entity<FormKey>(key =>
        {
            key.HasKey(k => k.Key);
            key.HasIndex(k => k.At);
        });
        model.Entity<JournalEntry>().ToTable("Journal");
    }
}
