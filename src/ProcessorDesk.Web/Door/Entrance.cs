using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authentication.Cookies;
using ProcessorDesk.Records;

namespace ProcessorDesk.Web.Door;

/// <summary>Lets a hand in at a station, and remembers the station on this device.</summary>
internal static class Entrance
{
    private const string StationCookie = "desk-station";

    /// <summary>The station this device stood at last; the counter where that is not known.</summary>
    public static string LastStation(this HttpContext context) =>
        Known(context.Request.Cookies[StationCookie]) ?? "Counter";

    /// <summary>A station's folder where the text is one; otherwise null.</summary>
    public static string? Known(string? station) => Stations.Places.FirstOrDefault(s => s.Folder == station)?.Folder;

    public static async Task LetIn(this HttpContext context, Staff staff, string station)
    {
        var principal = SignedIn.Principal(staff.Id, staff.Name, staff.Initials, staff.Role, station);
        await context.SignInAsync(
            CookieAuthenticationDefaults.AuthenticationScheme, principal, new AuthenticationProperties { IsPersistent = true });
        // What is drawn in this same answer, form tokens too, is already for the one who came in.
        context.User = principal;
        context.Response.Cookies.Append(StationCookie, station, new CookieOptions
        {
            HttpOnly = true,
            IsEssential = true,
            SameSite = SameSiteMode.Lax,
            Secure = context.Request.IsHttps,
            MaxAge = TimeSpan.FromDays(400),
        });
    }
}
