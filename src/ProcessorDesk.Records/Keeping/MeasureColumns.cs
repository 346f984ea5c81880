using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>How the trade's measures become columns: said once, by type. The column's name says the unit.</summary>
internal static class MeasureColumns
{
    private static readonly Dictionary<Type, string> s_suffixes = new()
    {
        [typeof(Weight)] = "Mg",
        [typeof(Money)] = "Cents",
        [typeof(Proportion)] = "Ppm",
        [typeof(Temperature)] = "HundredthsF",
    };

    public static void Conventions(ModelConfigurationBuilder conventions)
    {
        conventions.Properties<DateTime>().HaveConversion<UtcConverter>();
        foreach (var measure in s_suffixes.Keys)
            conventions.ComplexProperties(measure);
        conventions.ComplexProperties<ScaleDivision>();
    }

    /// <summary>Names the columns of every measure of every entity found so far.</summary>
    public static void NameColumns(ModelBuilder model)
    {
        foreach (var entity in model.Model.GetEntityTypes().ToList())
        {
            foreach (var measure in entity.GetComplexProperties())
                Name(measure);
        }
    }

    private static void Name(IMutableComplexProperty measure)
    {
        var type = Nullable.GetUnderlyingType(measure.ClrType) ?? measure.ClrType;
        foreach (var member in measure.ComplexType.GetProperties())
            member.SetColumnName(measure.Name + (s_suffixes.TryGetValue(type, out var suffix) ? suffix : member.Name));
    }
}
