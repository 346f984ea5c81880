using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Mvc.RazorPages;
using ProcessorDesk.Records.Tests.Plans;

namespace ProcessorDesk.Seasons.Tests.Looking;

/// <summary>Stands before all else in the server and notes each page load; one at a time, as the walks over the pages open them.</summary>
internal sealed class PageLoads : IStartupFilter, IDisposable
{
    private readonly List<PageLoad> _seen = [];

    // An answer reaches the client before the server has come back here: without this a load could be noted after it was asked for.
    private readonly SemaphoreSlim _turn = new(1);

    public QueryWatch Watch { get; } = new();

    /// <summary>What was seen since the last time.</summary>
    public IReadOnlyList<PageLoad> Take()
    {
        _turn.Wait();
        PageLoad[] taken = [.. _seen];
        _seen.Clear();
        _turn.Release();
        return taken;
    }

    public Action<IApplicationBuilder> Configure(Action<IApplicationBuilder> next) => app =>
    {
        app.Use(async (context, go) =>
        {
            await _turn.WaitAsync();
            try
            {
                Watch.Take();
                var started = TimeProvider.System.GetTimestamp();
                await go(context);
                Note(context, TimeProvider.System.GetElapsedTime(started));
            }
            finally
            {
                _turn.Release();
            }
        });
        next(app);
    };

    public void Dispose() => _turn.Dispose();

    private void Note(HttpContext context, TimeSpan took)
    {
        if (context.GetEndpoint()?.Metadata.GetMetadata<PageActionDescriptor>() is { } page)
            _seen.Add(new PageLoad(page.ViewEnginePath, context.Request.Path + context.Request.QueryString, context.Response.StatusCode, Watch.Take(), took));
    }
}
