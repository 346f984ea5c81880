namespace ProcessorDesk.Seasons.Tests;

/// <summary>Pages that are being mended and may still do what no page may. Every name goes as soon as its page is mended.</summary>
internal static class Pending
{
    public static IReadOnlySet<string> Scans { get; } = new HashSet<string>
    {
        "/Cooler/Hang", "/Cooler/Index", "/Counter/Claim", "/Counter/Index", "/Counter/Order", "/Counter/Shares", "/Counter/TakenIn", "/Counter/Tickets",
        "/Cutting/Index", "/Cutting/Lug", "/Cutting/Paper", "/Cutting/Sheet", "/Find/Index", "/Find/Job", "/Grind/Index", "/Pickup/Job", "/Pickup/Summary",
        "/Today/Index",
    };

    public static IReadOnlySet<string> Queries { get; } = new HashSet<string>
    {
        "/Counter/Animal", "/Counter/Claim", "/Counter/Index", "/Counter/Order", "/Counter/TakenIn", "/Counter/Tickets", "/Cutting/Index", "/Cutting/Paper",
        "/Cutting/Sheet", "/Find/Job", "/Grind/Split", "/Owner/Index", "/Pickup/Job", "/Pickup/Summary",
    };
}
