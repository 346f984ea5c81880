using System.Globalization;

namespace ProcessorDesk.Trade.Curing;

/// <summary>Parts per million as a person reads them: whole, but with two decimals within 5 ppm of a limit.</summary>
public static class PpmText
{
    private const decimal Near = 5m;

    /// <summary>"98 ppm"; "156.25 ppm" within 5 ppm of one of the limits. Halves are rounded away from zero.</summary>
    public static string Print(decimal partsPerMillion, params ReadOnlySpan<CureLimit> limits)
    {
        var decimals = 0;
        foreach (var limit in limits)
        {
            if (Math.Abs(partsPerMillion - limit.PartsPerMillion) <= Near)
                decimals = 2;
        }

        return Print(partsPerMillion, decimals);
    }

    /// <summary>A figure that is past a limit, with as many decimals as it takes to be seen to be past it.</summary>
    public static string PrintPast(decimal partsPerMillion, CureLimit limit)
    {
        var decimals = 2;
        while (decimals < 10 && Rounded(partsPerMillion, decimals) == limit.PartsPerMillion)
            decimals++;
        return decimals == 2 ? Print(partsPerMillion, limit) : Print(partsPerMillion, decimals);
    }

    /// <summary>The limit itself, always exactly: "156.25 ppm", "200 ppm".</summary>
    public static string Print(CureLimit limit) =>
        limit.PartsPerMillion.ToString("#,0.######", CultureInfo.InvariantCulture) + " ppm";

    private static string Print(decimal partsPerMillion, int decimals) =>
        Rounded(partsPerMillion, decimals).ToString("N" + decimals, CultureInfo.InvariantCulture) + " ppm";

    private static decimal Rounded(decimal partsPerMillion, int decimals) =>
        decimal.Round(partsPerMillion, decimals, MidpointRounding.AwayFromZero);
}
