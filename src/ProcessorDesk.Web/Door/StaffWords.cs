using ProcessorDesk.Records;

namespace ProcessorDesk.Web.Door;

/// <summary>Roles in the shop's words.</summary>
public static class StaffWords
{
    public static string Role(StaffRole role) => role switch
    {
        StaffRole.Clerk => "Counter clerk",
        StaffRole.Cutter => "Cutter",
        StaffRole.Kitchen => "Kitchen hand",
        StaffRole.Manager => "Manager",
    };
}
