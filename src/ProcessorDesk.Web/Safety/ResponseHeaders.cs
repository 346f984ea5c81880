using ProcessorDesk.Web.Door;

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
        // Seen before the answer may be put together from another of our pages.
        var ofOwner = context.Request.Path.StartsWithSegments(OwnerLinks.Folder);
        context.Response.OnStarting(() =>
        {
            Set(context.Response);
            if (ofOwner)
                KeepToTheOwner(context.Response);
            return Task.CompletedTask;
        });
        return next(context);
    });

    /// <summary>The address of an owner's page is its key: no other site is told it, no search engine or cache keeps it.</summary>
    private static void KeepToTheOwner(HttpResponse response)
    {
        response.Headers["Referrer-Policy"] = "no-referrer";
        response.Headers["X-Robots-Tag"] = "noindex, nofollow, noarchive";
        response.Headers.CacheControl = "no-store";
    }

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
