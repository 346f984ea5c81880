using System.Data.Common;

namespace ProcessorDesk.Records.Tests.Plans;

/// <summary>A query as it was sent, with its values.</summary>
public sealed record SeenQuery(string Sql, IReadOnlyList<(string Name, object? Value)> Values)
{
    public static SeenQuery Of(DbCommand command) =>
        new(command.CommandText, [.. command.Parameters.Cast<DbParameter>().Select(parameter => (parameter.ParameterName, parameter.Value))]);

    /// <summary>The same query once more, with words before it.</summary>
    public DbCommand Again(DbConnection connection, string before = "")
    {
        var command = connection.CreateCommand();
        command.CommandText = before + Sql;
        foreach (var (name, value) in Values)
        {
            var parameter = command.CreateParameter();
            (parameter.ParameterName, parameter.Value) = (name, value);
            command.Parameters.Add(parameter);
        }

        return command;
    }
}
