using System.Data.Common;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace ProcessorDesk.Records.Tests.Cast;

/// <summary>Keeps the text of every query a context runs, and how SQLite goes about it with the very parameters.</summary>
public sealed class PlanWatch : DbCommandInterceptor
{
    public List<string> Queries { get; } = [];

    public List<string> Plan { get; } = [];

    /// <summary>Steps that read a whole table. An index of words, and rows put together on the way, are not tables.</summary>
    public IEnumerable<string> Scans => Plan.Where(step =>
        step.StartsWith("SCAN", StringComparison.Ordinal)
        && !step.Contains("VIRTUAL TABLE INDEX", StringComparison.Ordinal)
        && !step.Contains("CONSTANT ROW", StringComparison.Ordinal));

    public static RecordsContext Open(ShopFile shop, PlanWatch watch)
    {
        var options = new DbContextOptionsBuilder<RecordsContext>();
        options.UseRecordsFile(shop.DatabasePath).AddInterceptors(watch);
        return new RecordsContext(options.Options);
    }

    public override InterceptionResult<DbDataReader> ReaderExecuting(
        DbCommand command, CommandEventData eventData, InterceptionResult<DbDataReader> result)
    {
        Queries.Add(command.CommandText);
        using var explain = command.Connection!.CreateCommand();
        explain.Transaction = command.Transaction;
        explain.CommandText = "EXPLAIN QUERY PLAN " + command.CommandText;
        foreach (DbParameter parameter in command.Parameters)
        {
            var copy = explain.CreateParameter();
            (copy.ParameterName, copy.Value) = (parameter.ParameterName, parameter.Value);
            explain.Parameters.Add(copy);
        }

        using var steps = explain.ExecuteReader();
        while (steps.Read())
            Plan.Add(steps.GetString(3));
        return result;
    }
}
