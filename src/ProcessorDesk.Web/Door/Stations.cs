using ProcessorDesk.Records;

namespace ProcessorDesk.Web.Door;

/// <summary>A place in the shop: the folder its pages are in, and who may open them. The manager may open every one.</summary>
/// <param name="Listed">Whether it stands among the stations at the top of the page.</param>
public sealed record Station(string Folder, string Name, bool Listed, params StaffRole[] Roles)
{
    public string Address => "/" + Folder;

    public bool IsOpenTo(StaffRole role) => role == StaffRole.Manager || Roles.Contains(role);
}

/// <summary>The one table of folder and role. A page in a folder that is not here is open to nobody.</summary>
public static class Stations
{
    private const StaffRole Clerk = StaffRole.Clerk;
    private const StaffRole Cutter = StaffRole.Cutter;
    private const StaffRole Kitchen = StaffRole.Kitchen;

    public static IReadOnlyList<Station> All { get; } =
    [
        new("Today", "Today", true, Clerk, Cutter, Kitchen),
        new("Counter", "Counter", true, Clerk),
        new("Cooler", "Cooler", true, Clerk, Cutter),
        new("Cutting", "Cutting", true, Cutter),
        new("Grind", "Grind", true, Clerk, Cutter, Kitchen),
        new("Kitchen", "Kitchen", true, Kitchen),
        new("Freezer", "Freezer", true, Clerk, Cutter, Kitchen),
        new("Pickup", "Pickup", true, Clerk),
        new("Office", "Office", true),
        new("Trace", "Trace", false, Kitchen),
        new("Find", "Find", false, Clerk, Cutter, Kitchen),
        new("Me", "My own", false, Clerk, Cutter, Kitchen),
    ];

    /// <summary>Folders open to anyone on the network, signed in or not.</summary>
    public static IReadOnlyList<string> Open { get; } = ["Door", "Trouble", "Owner", "Bench"];

    /// <summary>Stations a tablet or a desk can stand at.</summary>
    public static IEnumerable<Station> Places => All.Where(s => s.Listed && s.Folder != "Today");
}
