using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.AspNetCore.Authorization;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Forms;

namespace ProcessorDesk.Web.Door;

/// <summary>Who may come in, and where to: closed to everyone but where a folder's roles say otherwise.</summary>
internal static class DoorSetup
{
    public static void AddDoor(this IServiceCollection services)
    {
        services.AddSingleton<PinTries>();
        services.AddSingleton<OwnerLinks>();
        services.AddSingleton<WrongLinks>();
        services.AddAuthentication(CookieAuthenticationDefaults.AuthenticationScheme).AddCookie(options =>
        {
            options.Cookie.Name = "desk";
            options.Cookie.IsEssential = true;
            options.LoginPath = "/Door";
            options.ReturnUrlParameter = "ReturnUrl";
            // A station stays signed in: nobody is put out in the middle of a weighing.
            options.ExpireTimeSpan = TimeSpan.FromDays(30);
            options.SlidingExpiration = true;
            options.Events.OnValidatePrincipal = StillHere.Check;
            options.Events.OnRedirectToLogin = async context =>
            {
                if (KeptForm.IsLive(context.Request)) context.Response.StatusCode = StatusCodes.Status401Unauthorized;
                else if (!await KeptForms.TryKeepAtTheDoor(context.HttpContext)) context.Response.Redirect(context.RedirectUri);
            };
            options.Events.OnRedirectToAccessDenied = context =>
            {
                context.Response.StatusCode = StatusCodes.Status403Forbidden;
                return Task.CompletedTask;
            };
        });
        services.AddAuthorization(options =>
        {
            foreach (var station in Stations.All)
            {
                string[] roles = [.. Enum.GetValues<StaffRole>().Where(station.IsOpenTo).Select(role => role.ToString())];
                options.AddPolicy(station.Folder, policy => policy.RequireRole(roles));
            }
            // A page in no listed folder is open to nobody; an address without a page may say that it is not there.
            options.FallbackPolicy = new AuthorizationPolicyBuilder()
                .RequireAuthenticatedUser()
                .RequireAssertion(c => c.Resource is HttpContext context && context.GetEndpoint() is null)
                .Build();
        });
    }
}
