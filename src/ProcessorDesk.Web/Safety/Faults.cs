using ProcessorDesk.Web.Forms;

namespace ProcessorDesk.Web.Safety;

/// <summary>
/// Says every refusal in plain words. An unforeseen fault gets a page with a reference, which the log has too, and the form
/// that was on its way is kept on it.
/// </summary>
internal sealed class Faults(RequestDelegate next, ILogger<Faults> log)
{
    public async Task InvokeAsync(HttpContext context)
    {
        try
        {
            await next(context);
            if (IsSilentRefusal(context.Response)) await context.ShowInstead(next, "/Trouble", context.Response.StatusCode);
        }
        catch (OperationCanceledException) when (context.RequestAborted.IsCancellationRequested)
        {
            // The browser has gone; there is nobody to answer.
        }
        catch (Exception fault) when (!context.Response.HasStarted)
        {
            await Show(context, fault);
        }
    }

    // A status without a word: no page, not for these hands, not that way.
    private static bool IsSilentRefusal(HttpResponse response) =>
        response.StatusCode >= 400 && !response.HasStarted && response.ContentType is null && response.ContentLength is null;

    private async Task Show(HttpContext context, Exception exception)
    {
        context.Response.Clear();
        if (exception is BadHttpRequestException bad)
        {
            await context.ShowInstead(next, "/Trouble", bad.StatusCode);
            return;
        }
        var fault = Fault.New();
        log.LogError(exception, "Fault {Reference} at {Method} {Path}", fault.Reference, context.Request.Method, context.Request.Path);
        context.Items[typeof(Fault)] = fault;
        await KeptForm.Keep(context);
        await context.ShowInstead(next, "/Trouble", StatusCodes.Status500InternalServerError);
    }
}
