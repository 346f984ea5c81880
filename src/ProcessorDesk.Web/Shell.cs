using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.RateLimiting;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using ProcessorDesk.Web.Bench;
using ProcessorDesk.Web.Door;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Safety;

namespace ProcessorDesk.Web;

/// <summary>What all stations stand on: pages, door, forms that lose nothing, plain words for trouble. The order is the meaning.</summary>
internal static class Shell
{
    public static void AddShell(this IServiceCollection services)
    {
        services.AddDoor();
        BenchRate.Add(services);
        // A long cooking record stands in its address whole.
        services.Configure<KestrelServerOptions>(options => options.Limits.MaxRequestLineSize = Entries.LongestAddress);
        services.AddAntiforgery(options =>
        {
            options.Cookie.Name = "desk-form";
            options.SuppressXFrameOptionsHeader = true;
        });
        services.AddRazorPages(options =>
        {
            foreach (var station in Stations.All) options.Conventions.AuthorizeFolder(station.Address, station.Folder);
            foreach (var folder in Stations.Open) options.Conventions.AllowAnonymousToFolder("/" + folder);
            options.Conventions.AddFolderApplicationModelConvention("/Bench", page => page.EndpointMetadata.Add(new EnableRateLimitingAttribute(BenchRate.Policy)));
        }).AddMvcOptions(options =>
        {
            FormBinding.Set(options);
            options.Filters.Add(new KeptForms.TokenFilter());
        });
    }

    public static void UseShell(this WebApplication app)
    {
        app.UseResponseHeaders();
        app.UseMiddleware<Faults>();
        app.UseForeignPostRefusal();
        app.UseMiddleware<KeptForms>();
        app.UseRouting();
        app.UseRateLimiter();
        app.UseAuthentication();
        app.Use(StillHere.SayFault);
        app.UseAuthorization();
        app.MapStaticAssets().Add(endpoint => endpoint.Metadata.Add(new AllowAnonymousAttribute()));
        app.MapGet("/", () => Results.LocalRedirect("/Today")).AllowAnonymous();
        app.MapGet(BenchList.Document, () => Results.Text(BenchDocument.Text, BenchJson.Plain)).AllowAnonymous().RequireRateLimiting(BenchRate.Policy);
        app.MapRazorPages();
    }
}
