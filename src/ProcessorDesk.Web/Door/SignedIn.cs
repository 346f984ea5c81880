using System.Globalization;
using System.Security.Claims;
using Microsoft.AspNetCore.Authentication.Cookies;
using ProcessorDesk.Records;

namespace ProcessorDesk.Web.Door;

/// <summary>Who is signed in here and at which station, as the cookie says it.</summary>
public sealed class SignedIn(ClaimsPrincipal principal)
{
    private const string StationClaim = "station";
    private const string InitialsClaim = "initials";

    public int StaffId => int.Parse(Of(ClaimTypes.NameIdentifier), CultureInfo.InvariantCulture);

    public string Name => Of(ClaimTypes.Name);

    public string Initials => Of(InitialsClaim);

    public StaffRole Role => Enum.Parse<StaffRole>(Of(ClaimTypes.Role));

    /// <summary>The station's folder.</summary>
    public string Station => Of(StationClaim);

    public string StationName => Stations.All.FirstOrDefault(s => s.Folder == Station)?.Name ?? Station;

    /// <summary>Whether this hand may open the pages of a station.</summary>
    public bool MayOpen(string folder) => Stations.All.Single(station => station.Folder == folder).IsOpenTo(Role);

    /// <summary>The hand that verbs are run with.</summary>
    public Hand Hand => new(StaffId, Station);

    public static ClaimsPrincipal Principal(int staffId, string name, string initials, StaffRole role, string station) => new(new ClaimsIdentity(
        [
            new(ClaimTypes.NameIdentifier, staffId.ToString(CultureInfo.InvariantCulture)),
            new(ClaimTypes.Name, name),
            new(InitialsClaim, initials),
            new(ClaimTypes.Role, role.ToString()),
            new(StationClaim, station),
        ],
        CookieAuthenticationDefaults.AuthenticationScheme));

    private string Of(string claim) =>
        principal.FindFirstValue(claim) ?? throw new InvalidOperationException($"Nobody is signed in ({claim}).");
}
