namespace ProcessorDesk.Web.Safety;

/// <summary>Refuses, before anything of it is read, a form that another site's page sent.</summary>
internal static class ForeignPosts
{
    public static IApplicationBuilder UseForeignPostRefusal(this IApplicationBuilder app) => app.Use((context, next) =>
    {
        if (!Writes(context.Request.Method) || !IsForeign(context.Request)) return next(context);
        context.Response.StatusCode = StatusCodes.Status403Forbidden;
        context.Response.ContentType = "text/plain; charset=utf-8";
        return context.Response.WriteAsync("This form was sent from another site, so nothing was done with it. Open the shop's own page and fill it in there.");
    });

    private static bool Writes(string method) =>
        !HttpMethods.IsGet(method) && !HttpMethods.IsHead(method) && !HttpMethods.IsOptions(method) && !HttpMethods.IsTrace(method);

    private static bool IsForeign(HttpRequest request)
    {
        // Browsers send the first of these only over https or on the machine itself; the second always with a form.
        var site = request.Headers["Sec-Fetch-Site"].ToString();
        if (site is "cross-site" or "same-site") return true;
        var origin = request.Headers.Origin.ToString();
        if (origin == "") return false;
        return !Uri.TryCreate(origin, UriKind.Absolute, out var from)
            || !HostString.FromUriComponent(from).Equals(WithPort(request.Host, from));
    }

    // A host without a port stands at the usual one of the scheme the page came by.
    private static HostString WithPort(HostString host, Uri from) =>
        host.Port is null || !from.IsDefaultPort || host.Port != from.Port ? host : new HostString(host.Host);
}
