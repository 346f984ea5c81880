namespace ProcessorDesk.Web.Safety;

/// <summary>What every answer tells the browser it may do: scripts, styles and pictures of our own only, nothing written inline.</summary>
internal static class ResponseHeaders
{
    private const string Pages =
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; font-src 'self'; connect-src 'self'; " +
        "media-src 'self' blob:; worker-src 'self' blob:; manifest-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    // A browser's PDF viewer is a page of its own kind, and the policy of the paper would fall on it.
    private const string Papers = "frame-ancestors 'none'";

    public static IApplicationBuilder UseResponseHeaders(this IApplicationBuilder app) => app.Use((context, next) =>
    {
        context.Response.OnStarting(() =>
        {
            Set(context.Response);
            return Task.CompletedTask;
        });
        return next(context);
    });

    private static void Set(HttpResponse response)
    {
        var paper = response.ContentType?.StartsWith("application/pdf", StringComparison.OrdinalIgnoreCase) is true;
        response.Headers.ContentSecurityPolicy = paper ? Papers : Pages;
        response.Headers.XContentTypeOptions = "nosniff";
        response.Headers.XFrameOptions = "DENY";
        response.Headers["Referrer-Policy"] = "same-origin";
        response.Headers["Cross-Origin-Opener-Policy"] = "same-origin";
        response.Headers["Permissions-Policy"] = "camera=(self), microphone=(), geolocation=()";
        if (response.ContentType?.StartsWith("text/html", StringComparison.OrdinalIgnoreCase) is true && response.Headers.CacheControl.Count == 0)
            response.Headers.CacheControl = "no-store";
    }
}
