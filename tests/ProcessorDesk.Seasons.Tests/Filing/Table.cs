using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace ProcessorDesk.Seasons.Tests.Filing;

/// <summary>
/// One table of the file, filled from the entities themselves. Columns, names and conversions come from the model the app runs on,
/// so that a column added there is written here.
/// </summary>
internal sealed class Table : IDisposable
{
    private readonly IEntityType _entity;
    private readonly IProperty? _numbered;
    private readonly Func<object, object?>[] _columns;
    private readonly object?[] _row;
    private readonly PreparedInsert _insert;
    private List<object> _waiting = [];
    private readonly Dictionary<Type, IForeignKey> _keysUnder = [];
    private int _lastId;

    /// <exception cref="InvalidOperationException">A column has no property to be read from.</exception>
    public Table(IEntityType entity, SqliteConnection connection, int lastId)
    {
        _entity = entity;
        _lastId = lastId;
        var properties = entity.GetFlattenedProperties().ToList();
        if (properties.FirstOrDefault(property => property.IsShadowProperty()) is { } shadow)
            throw new InvalidOperationException($"{entity.ShortName()}.{shadow.Name} stands in the model alone; nothing can be read for it.");
        var key = entity.FindPrimaryKey()!.Properties;
        _numbered = key is [{ ValueGenerated: ValueGenerated.OnAdd } id] && id.ClrType == typeof(int) ? id : null;
        _columns = [.. properties.Select(Reader)];
        _row = new object?[_columns.Length];
        _insert = new PreparedInsert(connection, entity.GetTableName()!, [.. properties.Select(property => property.GetColumnName())]);
    }

    /// <summary>Gives the entity its id where the file would, and its place under another; it is written with the rest.</summary>
    /// <returns>The key as the journal names it.</returns>
    public string Add(object entity, object? under)
    {
        if (under is not null)
            PutUnder(entity, under);
        _numbered?.PropertyInfo!.SetValue(entity, ++_lastId);
        _waiting.Add(entity);
        return KeyOf(entity);
    }

    public string KeyOf(object entity) => _numbered is not null
        ? $"{_numbered.GetGetter().GetClrValue(entity)}"
        : string.Join('/', _entity.FindPrimaryKey()!.Properties.Select(part => part.GetGetter().GetClrValue(entity)));

    /// <summary>What was added since the last time; nothing more is changed of it.</summary>
    public List<object> Take()
    {
        var taken = _waiting;
        _waiting = [];
        return taken;
    }

    public void Write(List<object> entities)
    {
        foreach (var entity in entities)
        {
            for (var i = 0; i < _columns.Length; i++)
                _row[i] = _columns[i](entity);
            _insert.Run(_row);
        }
    }

    public void Dispose() => _insert.Dispose();

    private void PutUnder(object entity, object whole)
    {
        if (!_keysUnder.TryGetValue(whole.GetType(), out var key))
            _keysUnder[whole.GetType()] = key = _entity.GetForeignKeys().Single(one => one.PrincipalEntityType.ClrType == whole.GetType());
        key.Properties.Single().PropertyInfo!.SetValue(entity, key.PrincipalKey.Properties.Single().GetGetter().GetClrValue(whole));
    }

    /// <summary>A key is read from the entity it points at where that is at hand, as the framework would on saving.</summary>
    private static Func<object, object?> Reader(IProperty property)
    {
        var own = property.GetGetter();
        var toFile = property.GetTypeMapping().Converter?.ConvertToProvider;
        if (property.GetContainingForeignKeys().FirstOrDefault(key => key.Properties.Count == 1 && key.DependentToPrincipal is not null) is { } key)
        {
            var target = key.DependentToPrincipal!.GetGetter();
            var id = key.PrincipalKey.Properties.Single().GetGetter();
            return entity => target.GetClrValue(entity) is { } pointedAt ? id.GetClrValue(pointedAt) : own.GetClrValue(entity);
        }

        var read = property.DeclaringType is IComplexType measure ? Inside(measure.ComplexProperty.GetGetter(), own) : own.GetClrValue;
        return toFile is null ? read : entity => toFile(read(entity));
    }

    private static Func<object, object?> Inside(IClrPropertyGetter measure, IClrPropertyGetter member) =>
        entity => measure.GetClrValue(entity) is { } measured ? member.GetClrValue(measured) : null;
}
