using System.Data.Common;
using System.Text.RegularExpressions;

namespace ProcessorDesk.Records.Tests.Plans;

/// <summary>How SQLite goes about a query, step by step, and which steps read a whole table that grows with the seasons.</summary>
/// <remarks>
/// The words are those of EXPLAIN QUERY PLAN (sqlite.org/eqp.html): SCAN reads all of something; an AUTOMATIC index is made of all
/// of it, anew for every query. A table is named there by what the query calls it.
/// </remarks>
public sealed partial class QueryPlan
{
    private readonly SeenQuery _query;
    private readonly FileTables _tables;
    private readonly ILookup<string, string> _called;

    private QueryPlan(SeenQuery query, FileTables tables, IReadOnlyList<string> steps)
    {
        (_query, _tables, Steps) = (query, tables, steps);
        _called = TableInUse().Matches(query.Sql)
            .ToLookup(use => use.Groups["called"] is { Success: true } name ? name.Value : use.Groups["table"].Value, use => use.Groups["table"].Value);
    }

    public IReadOnlyList<string> Steps { get; }

    /// <summary>Steps whose cost grows with the seasons; empty for a query that finds its rows by an index.</summary>
    public IEnumerable<string> Scans => Steps.Where(IsScan);

    public static QueryPlan Of(SeenQuery query, DbConnection connection, FileTables tables)
    {
        using var explain = query.Again(connection, "EXPLAIN QUERY PLAN ");
        using var reader = explain.ExecuteReader();
        var steps = new List<string>();
        while (reader.Read())
            steps.Add(reader.GetString(3));
        return new QueryPlan(query, tables, steps);
    }

    /// <summary>The scans, the query and the whole plan, for whoever has to mend it.</summary>
    public override string ToString() => $"{string.Join("; ", Scans)}\n{_query.Sql}\n    {string.Join("\n    ", Steps)}";

    private bool IsScan(string words)
    {
        if (Step().Match(words) is not { Success: true } step || !_called[step.Groups["name"].Value].Any(_tables.Grows))
            return false;
        var how = step.Groups["how"].Value;
        if (how.Contains("AUTOMATIC", StringComparison.Ordinal))
            return true;
        if (step.Groups["verb"].Value == "SEARCH")
            return false;
        // An index of words that was asked for nothing, "0:", gives everything back.
        if (how.Contains("VIRTUAL TABLE INDEX", StringComparison.Ordinal))
            return how.EndsWith(':');
        return !(IndexUsed().Match(how) is { Success: true } index && FileTables.Short.Contains(index.Groups["index"].Value)) && !StopsEarly();
    }

    /// <summary>The first rows in the order they stand in: read until the limit, neither sorted first nor passed over. Or nothing is asked for.</summary>
    private bool StopsEarly() =>
        _query.Sql.TrimEnd().EndsWith("WHERE 0", StringComparison.Ordinal)
        || (_query.Sql.Contains("LIMIT", StringComparison.Ordinal) && !_query.Sql.Contains("WHERE", StringComparison.Ordinal)
            && !Steps.Any(step => step.StartsWith("USE TEMP B-TREE FOR ORDER BY", StringComparison.Ordinal)));

    [GeneratedRegex(@"^(?<verb>SCAN|SEARCH) (?<name>\S+)(?<how>.*)$")]
    private static partial Regex Step();

    [GeneratedRegex(@"USING (COVERING )?INDEX (?<index>\S+)")]
    private static partial Regex IndexUsed();

    /// <summary>A table as a query names it, quoted, with the short name it may be given.</summary>
    [GeneratedRegex(@"(FROM|JOIN|,|UPDATE|INTO) ""(?<table>\w+)""( (AS )?""?(?!ON\b|WHERE\b|SET\b|CROSS\b|INNER\b|LEFT\b|ORDER\b|GROUP\b|LIMIT\b)(?<called>\w+)""?)?")]
    private static partial Regex TableInUse();
}
