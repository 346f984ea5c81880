using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;
using ProcessorDesk.Records.Tests.Cast;
using ProcessorDesk.Trade;
using Xunit;

namespace ProcessorDesk.Records.Tests.Keeping;

public sealed class SchemaTests(ShopFile shop) : IClassFixture<ShopFile>
{
    private static readonly Dictionary<Type, string> _units = new()
    {
        [typeof(Weight)] = "Mg",
        [typeof(Money)] = "Cents",
        [typeof(Proportion)] = "Ppm",
        [typeof(Temperature)] = "HundredthsF",
    };

    [Fact]
    public void Model_and_migrations_agree()
    {
        using var records = shop.Open();

        Assert.False(records.Database.HasPendingModelChanges());
        Assert.Empty(records.Database.GetPendingMigrations());
    }

    [Fact]
    public void Every_measure_is_a_whole_number_in_a_column_that_names_its_unit()
    {
        using var records = shop.Open();
        var measures = Measures(records.Model).ToList();

        Assert.Equal(73, measures.Count(measure => _units.ContainsKey(TypeOf(measure))));
        foreach (var measure in measures.Where(measure => _units.ContainsKey(TypeOf(measure))))
        {
            var member = Assert.Single(measure.ComplexType.GetProperties());
            Assert.Equal(measure.Name + _units[TypeOf(measure)], member.GetColumnName());
            Assert.Contains(member.ClrType, (Type[])[typeof(long), typeof(int)]);
            Assert.Equal(["INTEGER"], TypesInFile(measure, member));
        }
    }

    [Fact]
    public void A_scale_division_is_kept_as_its_unit_and_its_step_in_millionths()
    {
        using var records = shop.Open();
        var divisions = Measures(records.Model).Where(measure => TypeOf(measure) == typeof(ScaleDivision)).ToList();

        Assert.Equal(5, divisions.Count);
        Assert.All(divisions, division => Assert.Equal(
            [division.Name + "StepMillionths", division.Name + "Unit"],
            division.ComplexType.GetProperties().Select(member => member.GetColumnName()).Order()));
    }

    [Fact]
    public void Columns_are_whole_numbers_or_text_and_nothing_else()
    {
        var types = shop.Column(
            """
            SELECT DISTINCT c.type FROM sqlite_master t JOIN pragma_table_info(t.name) c
            WHERE t.type = 'table' AND t.name NOT LIKE 'OwnerFind%' AND t.name NOT LIKE 'PersonFind%' AND t.name NOT LIKE 'sqlite%' ORDER BY 1
            """);

        Assert.Equal(["INTEGER", "TEXT"], types);
    }

    [Fact]
    public void No_property_is_of_a_type_the_file_can_not_compare()
    {
        using var records = shop.Open();
        var types = records.Model.GetEntityTypes()
            .SelectMany(entity => entity.GetProperties().Concat(entity.GetComplexProperties().SelectMany(one => one.ComplexType.GetProperties())))
            .Select(property => Nullable.GetUnderlyingType(property.ClrType) ?? property.ClrType)
            .Select(type => type.IsEnum ? typeof(int) : type)
            .Distinct();

        Assert.Empty(types.Except([typeof(int), typeof(long), typeof(bool), typeof(string), typeof(DateTime), typeof(DateOnly)]));
    }

    [Fact]
    public void The_file_holds_exactly_the_triggers_that_are_listed() =>
        Assert.Equal(SchemaList.Triggers.Order(StringComparer.Ordinal), Named("trigger").Order(StringComparer.Ordinal));

    [Fact]
    public void The_file_holds_exactly_the_indexes_that_are_listed() =>
        Assert.Equal(SchemaList.Indexes.Order(StringComparer.Ordinal), Named("index").Order(StringComparer.Ordinal));

    [Fact]
    public void Every_reference_is_led_by_an_index_or_a_key()
    {
        var bare = shop.Column(
            """
            SELECT t.name || '.' || f."from" FROM sqlite_master t JOIN pragma_foreign_key_list(t.name) f
            WHERE t.type = 'table' AND NOT EXISTS (
                SELECT 1 FROM pragma_index_list(t.name) i JOIN pragma_index_info(i.name) c WHERE c.seqno = 0 AND c.name = f."from")
            AND NOT EXISTS (SELECT 1 FROM pragma_table_info(t.name) k WHERE k.pk = 1 AND k.name = f."from")
            """);

        Assert.Empty(bare);
    }

    private IEnumerable<string> Named(string type) =>
        shop.Column($"SELECT name FROM sqlite_master WHERE type = '{type}' AND sql IS NOT NULL").Select(name => name!);

    private List<string?> TypesInFile(IComplexProperty measure, IProperty member) =>
        shop.Column($"SELECT type FROM pragma_table_info('{measure.DeclaringType.GetTableName()}') WHERE name = '{member.GetColumnName()}'");

    private static IEnumerable<IComplexProperty> Measures(IModel model) =>
        model.GetEntityTypes().SelectMany(entity => entity.GetComplexProperties());

    private static Type TypeOf(IComplexProperty measure) => Nullable.GetUnderlyingType(measure.ClrType) ?? measure.ClrType;
}
