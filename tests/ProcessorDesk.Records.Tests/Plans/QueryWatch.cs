using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace ProcessorDesk.Records.Tests.Plans;

/// <summary>Keeps every command a context sends; what the connection is told on opening is none.</summary>
public sealed class QueryWatch : DbCommandInterceptor
{
    private readonly List<SeenQuery> _seen = [];

    public IReadOnlyList<SeenQuery> Seen => _seen;

    /// <summary>What was seen since the last time.</summary>
    public IReadOnlyList<SeenQuery> Take()
    {
        SeenQuery[] taken = [.. _seen];
        _seen.Clear();
        return taken;
    }

    public override InterceptionResult<DbDataReader> ReaderExecuting(
        DbCommand command, CommandEventData eventData, InterceptionResult<DbDataReader> result) => See(command, result);

    public override InterceptionResult<object> ScalarExecuting(
        DbCommand command, CommandEventData eventData, InterceptionResult<object> result) => See(command, result);

    public override InterceptionResult<int> NonQueryExecuting(
        DbCommand command, CommandEventData eventData, InterceptionResult<int> result) => See(command, result);

    public override ValueTask<InterceptionResult<DbDataReader>> ReaderExecutingAsync(
        DbCommand command, CommandEventData eventData, InterceptionResult<DbDataReader> result, CancellationToken cancellationToken = default) =>
        ValueTask.FromResult(See(command, result));

    public override ValueTask<InterceptionResult<object>> ScalarExecutingAsync(
        DbCommand command, CommandEventData eventData, InterceptionResult<object> result, CancellationToken cancellationToken = default) =>
        ValueTask.FromResult(See(command, result));

    public override ValueTask<InterceptionResult<int>> NonQueryExecutingAsync(
        DbCommand command, CommandEventData eventData, InterceptionResult<int> result, CancellationToken cancellationToken = default) =>
        ValueTask.FromResult(See(command, result));

    private T See<T>(DbCommand command, T result)
    {
        _seen.Add(SeenQuery.Of(command));
        return result;
    }
}
