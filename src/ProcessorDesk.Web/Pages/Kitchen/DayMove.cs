using System.Globalization;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>One change of the day's plan by hand, as it stands in the page's address.</summary>
/// <param name="To">Number of the load it goes into; null for a load of its own, or, where it waits, none.</param>
public sealed record DayMove(int Allotment, int? To, bool Waits)
{
    public const string Wait = "wait";

    public const string New = "new";

    /// <summary>"12:3" into load 3, "12:new" into a load of its own, "12:wait" for another day.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Allotment}:{(Waits ? Wait : To is { } load ? load.ToString(CultureInfo.InvariantCulture) : New)}");

    /// <summary>Null where it can't be read.</summary>
    public static DayMove? Parse(string? text)
    {
        if (text?.Split(':') is not [var allotment, var to] || !int.TryParse(allotment, NumberStyles.None, CultureInfo.InvariantCulture, out var id))
            return null;
        return to is Wait or New ? new DayMove(id, null, to == Wait)
            : int.TryParse(to, NumberStyles.None, CultureInfo.InvariantCulture, out var load) ? new DayMove(id, load, false)
            : null;
    }
}
