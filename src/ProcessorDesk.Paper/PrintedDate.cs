using System.Globalization;

namespace ProcessorDesk.Paper;

/// <summary>Dates and times as the papers print them.</summary>
public static class PrintedDate
{
    /// <summary>"Fri 27 Nov 2026".</summary>
    public static string Of(DateOnly date) => date.ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>"Fri 27 Nov 2026, 2:05 PM", in the zone the time was handed in.</summary>
    public static string Of(DateTime local) => $"{Of(DateOnly.FromDateTime(local))}, {Of(TimeOnly.FromDateTime(local))}";

    /// <summary>"2:05 PM".</summary>
    public static string Of(TimeOnly time) => time.ToString("h:mm tt", CultureInfo.InvariantCulture);
}
