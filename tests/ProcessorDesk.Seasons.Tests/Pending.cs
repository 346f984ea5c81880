namespace ProcessorDesk.Seasons.Tests;

/// <summary>Pages that are being mended and may still do what no page may. Every name goes as soon as its page is mended.</summary>
internal static class Pending
{
    public static IReadOnlySet<string> Scans { get; } = new HashSet<string>();

    public static IReadOnlySet<string> Queries { get; } = new HashSet<string>();

    /// <summary>A search of one letter sorts the jobs of all whose names begin with it, and these grow with the seasons.</summary>
    public static IReadOnlySet<string> Work { get; } = new HashSet<string> { "/Find/Index" };
}
