using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;

namespace ProcessorDesk.Web.Door;

/// <summary>A cookie lasts; what the office says about its hand counts: a retired hand is out, a new role or name holds at once.</summary>
internal static class StillHere
{
    public static async Task Check(CookieValidatePrincipalContext context)
    {
        var hand = new SignedIn(context.Principal!);
        var records = context.HttpContext.RequestServices.GetRequiredService<RecordsContext>();
        var staff = records.Staff.AsNoTracking().SingleOrDefault(s => s.Id == hand.StaffId && s.RetiredAt == null);
        if (staff is null)
        {
            context.RejectPrincipal();
            await context.HttpContext.SignOutAsync();
        }
        else if ((staff.Name, staff.Initials, staff.Role) != (hand.Name, hand.Initials, hand.Role))
        {
            context.ReplacePrincipal(SignedIn.Principal(staff.Id, staff.Name, staff.Initials, staff.Role, hand.Station));
            context.ShouldRenew = true;
        }
    }
}
