using System.Globalization;

namespace ProcessorDesk.Paper;

/// <summary>Dates and times as the papers print them.</summary>
public static class PrintedDate
{
    /// <summary>"Fri 27 Nov 2026".</summary>
    public static string Of(DateOnly date) => date.ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>"Fri 27 Nov 2026 14:05", in the zone the time was handed in.</summary>
    public static string Of(DateTime local) => local.ToString("ddd d MMM yyyy HH:mm", CultureInfo.InvariantCulture);
}
