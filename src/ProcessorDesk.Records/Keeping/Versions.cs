using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.ChangeTracking;

namespace ProcessorDesk.Records;

/// <summary>Raises the version of every whole that is saved changed, in itself or in a line that is edited with it.</summary>
internal static class Versions
{
    /// <summary>Lines edited as a part of their whole: whoever changes one must see what others changed in the rest.</summary>
    private static readonly Dictionary<Type, Type> s_wholes = new()
    {
        [typeof(CutOrderLine)] = typeof(Job),
        [typeof(GrindOrder)] = typeof(Job),
        [typeof(JobPerson)] = typeof(Job),
        [typeof(Price)] = typeof(PriceList),
        [typeof(FormulaVersion)] = typeof(Product),
    };

    public static void Raise(ChangeTracker tracker)
    {
        tracker.DetectChanges();
        var wholesOfLines = tracker.Entries().Where(IsChanged).Select(WholeOf).OfType<object>().ToHashSet();
        foreach (var entry in tracker.Entries<IVersioned>())
        {
            if (entry.State == EntityState.Modified || (entry.State == EntityState.Unchanged && wholesOfLines.Contains(Key(entry))))
                entry.Property(whole => whole.Version).CurrentValue++;
        }
    }

    private static bool IsChanged(EntityEntry entry) => entry.State is EntityState.Added or EntityState.Modified or EntityState.Deleted;

    private static (Type, object?)? WholeOf(EntityEntry line)
    {
        if (!s_wholes.TryGetValue(line.Metadata.ClrType, out var whole))
            return null;
        var reference = line.Metadata.GetForeignKeys().Single(key => key.PrincipalEntityType.ClrType == whole).Properties.Single();
        return (whole, line.Property(reference.Name).OriginalValue);
    }

    private static (Type, object?) Key(EntityEntry<IVersioned> whole) => (whole.Metadata.ClrType, whole.Property("Id").CurrentValue);
}
