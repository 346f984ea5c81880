using System.Runtime.ExceptionServices;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Door;

/// <summary>
/// A cookie lasts; what the office says about its hand counts: a retired hand is out, a new role or name holds at once. The shop's
/// settings, which every page needs, come along in the same query.
/// </summary>
internal static class StillHere
{
    public static async Task Check(CookieValidatePrincipalContext context)
    {
        var hand = new SignedIn(context.Principal!);
        if (!TryFind(context.HttpContext, hand.StaffId, out var staff))
            return;
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

    /// <summary>
    /// Where the records could not be read, says so now: no page is reached but the one that tells of it. Thrown in the check itself, the fault
    /// would be met again there, because what the check came to is kept for the whole request.
    /// </summary>
    public static Task SayFault(HttpContext context, RequestDelegate next)
    {
        if (context.Items.Remove(typeof(StillHere), out var fault))
            ((ExceptionDispatchInfo)fault!).Throw();
        return next(context);
    }

    /// <returns>False where the records could not be read.</returns>
    private static bool TryFind(HttpContext context, int staffId, out Staff? staff)
    {
        staff = null;
        try
        {
            var records = context.RequestServices.GetRequiredService<RecordsContext>();
            var found = records.Staff.AsNoTracking()
                .Where(one => one.Id == staffId && one.RetiredAt == null)
                .SelectMany(_ => records.Shop.AsNoTracking(), (one, shop) => new { Staff = one, Shop = shop })
                .SingleOrDefault();
            if (found is not null)
                context.RequestServices.GetRequiredService<ShopDay>().Know(found.Shop);
            staff = found?.Staff;
            return true;
        }
        catch (Exception fault)
        {
            context.Items[typeof(StillHere)] = ExceptionDispatchInfo.Capture(fault);
            return false;
        }
    }
}
