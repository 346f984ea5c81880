using Microsoft.AspNetCore.Http.Features;

namespace ProcessorDesk.Web.Safety;

/// <summary>Answers a request, of which nothing was sent yet, with one of our own pages in place of what it asked for, at the same address.</summary>
internal static class Again
{
    /// <param name="status">Kept on the page's answer unless the page sets another.</param>
    public static async Task ShowInstead(this HttpContext context, RequestDelegate next, string page, int status)
    {
        var request = context.Request;
        var (path, query, method) = (request.Path, request.QueryString, request.Method);
        context.Response.StatusCode = status;
        context.SetEndpoint(null);
        context.Features.Get<IRouteValuesFeature>()?.RouteValues.Clear();
        (request.Path, request.QueryString, request.Method) = (page, QueryString.Empty, HttpMethods.Get);
        try
        {
            await next(context);
        }
        finally
        {
            (request.Path, request.QueryString, request.Method) = (path, query, method);
        }
    }
}
