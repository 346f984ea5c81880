using Microsoft.EntityFrameworkCore;

namespace ProcessorDesk.Records;

internal static class OwnerTables
{
    public static void Map(ModelBuilder model) => model.Entity<Owner>(owner =>
    {
        owner.Property(o => o.Version).IsConcurrencyToken();
        owner.HasIndex(o => o.PhoneDigits);
        owner.Property(o => o.Name).UseCollation("NOCASE");
        owner.HasIndex(o => o.Name);
    });
}
