using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.ChangeTracking;

namespace ProcessorDesk.Records;

/// <summary>Watches one act's saves and writes them as one journal entry, chained to the entry before.</summary>
internal sealed class Journal : IDisposable
{
    private readonly RecordsContext _records;
    private readonly List<(EntityEntry Entry, EntityState State, JsonObject Before)> _pending = [];
    private readonly JsonArray _changes = [];

    public Journal(RecordsContext records)
    {
        _records = records;
        _records.SavingChanges += BeforeSave;
        _records.SavedChanges += AfterSave;
    }

    public void Write(string verb, Act act)
    {
        Dispose();
        var previous = _records.Journal.AsNoTracking().OrderByDescending(entry => entry.Id).Select(entry => entry.Hash).FirstOrDefault() ?? "";
        _records.Journal.Add(new JournalEntry(act.Now, act.Hand, verb, _changes.ToJsonString(), previous));
        _records.SaveChanges();
    }

    public void Dispose()
    {
        _records.SavingChanges -= BeforeSave;
        _records.SavedChanges -= AfterSave;
    }

    private void BeforeSave(object? sender, SavingChangesEventArgs e)
    {
        _pending.Clear();
        foreach (var entry in _records.ChangeTracker.Entries())
        {
            if (entry.State is EntityState.Added or EntityState.Modified or EntityState.Deleted && entry.Entity is not FormKey)
                _pending.Add((entry, entry.State, entry.State == EntityState.Added ? [] : Values(entry, before: true, all: entry.State == EntityState.Deleted)));
        }
    }

    private void AfterSave(object? sender, SavedChangesEventArgs e)
    {
        foreach (var (entry, state, before) in _pending)
        {
            var after = state == EntityState.Deleted ? [] : Values(entry, before: false, all: state == EntityState.Added, only: before);
            _changes.Add(new JsonObject
            {
                ["what"] = entry.Metadata.ClrType.Name,
                ["key"] = string.Join('/', entry.Metadata.FindPrimaryKey()!.Properties.Select(key => entry.Property(key.Name).CurrentValue)),
                ["act"] = state.ToString(),
                ["before"] = before,
                ["after"] = after,
            });
        }

        _pending.Clear();
    }

    private static JsonObject Values(EntityEntry entry, bool before, bool all, JsonObject? only = null)
    {
        var values = new JsonObject();
        foreach (var property in Properties(entry))
        {
            var name = property.Metadata.GetColumnName();
            if (all || (only?.ContainsKey(name) ?? property.IsModified))
                values[name] = Kept(before ? property.OriginalValue : property.CurrentValue);
        }

        return values;
    }

    private static IEnumerable<PropertyEntry> Properties(EntityEntry entry) =>
        entry.Properties.Concat(entry.ComplexProperties.SelectMany(complex => complex.Properties));

    private static JsonNode? Kept(object? value) => value switch
    {
        null => null,
        string => "text",
        Enum => JsonValue.Create(Convert.ToInt64(value, System.Globalization.CultureInfo.InvariantCulture)),
        _ => JsonSerializer.SerializeToNode(value),
    };
}
