using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.Core.Infrastructure;
using Microsoft.AspNetCore.Mvc.Filters;
using ProcessorDesk.Web.Safety;

namespace ProcessorDesk.Web.Forms;

/// <summary>
/// Nothing typed is lost. A form sent by someone who is signed out, or with a form token that no longer holds, is kept and
/// answered in place: with the door, or with the form itself to be sent once more.
/// </summary>
internal sealed class KeptForms(RequestDelegate next)
{
    private static readonly object Page = new();

    public async Task InvokeAsync(HttpContext context)
    {
        await next(context);
        if (context.Items.Remove(Page, out var page) && !context.Response.HasStarted)
            await context.ShowInstead(next, (string)page!, context.Response.StatusCode);
    }

    /// <summary>Signed out: the door is shown at the address the form was sent to.</summary>
    public static async Task<bool> TryKeepAtTheDoor(HttpContext context)
    {
        await KeptForm.Keep(context);
        if (KeptForm.Of(context) is null) return false;
        context.Response.StatusCode = StatusCodes.Status401Unauthorized;
        context.Items[Page] = "/Door";
        return true;
    }

    /// <summary>Catches a form whose token no longer holds, whichever page it was for.</summary>
    internal sealed class TokenFilter : IAsyncAlwaysRunResultFilter
    {
        public async Task OnResultExecutionAsync(ResultExecutingContext context, ResultExecutionDelegate next)
        {
            var http = context.HttpContext;
            if (context.Result is IAntiforgeryValidationFailedResult && !KeptForm.IsLive(http.Request))
            {
                if (http.Request.Path.StartsWithSegments("/Door")) KeptForm.CarryOn(http);
                else await KeptForm.Keep(http);
                http.Items[Page] = "/Door";
                context.Result = new StatusCodeResult(StatusCodes.Status400BadRequest);
            }
            await next();
        }
    }
}
