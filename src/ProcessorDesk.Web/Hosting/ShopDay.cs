using System.Globalization;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Deadlines;

namespace ProcessorDesk.Web.Hosting;

/// <summary>The shop's settings, its clock and its way of writing dates and weights, read once a request.</summary>
public sealed class ShopDay(RecordsContext records, TimeProvider clock)
{
    private ShopSettings? _settings;
    private TimeZoneInfo? _zone;

    public ShopSettings Settings => _settings ??= records.Shop.AsNoTracking().Single();

    /// <summary>Settings that were read on the way in, so that they are not read again.</summary>
    public void Know(ShopSettings settings) => _settings = settings;

    /// <summary>Now, in UTC.</summary>
    public DateTime Now => clock.GetUtcNow().UtcDateTime;

    /// <summary>Today on the shop's calendar.</summary>
    public DateOnly Today => DateOnly.FromDateTime(Local(Now));

    private TimeZoneInfo Zone => _zone ??= TimeZoneInfo.TryFindSystemTimeZoneById(Settings.TimeZone, out var zone) ? zone : TimeZoneInfo.Utc;

    /// <summary>A moment on the shop's clock.</summary>
    public DateTime Local(DateTime utc) => TimeZoneInfo.ConvertTimeFromUtc(DateTime.SpecifyKind(utc, DateTimeKind.Utc), Zone);

    public DateOnly DayOf(DateTime utc) => DateOnly.FromDateTime(Local(utc));

    /// <summary>Whether boxes of that moment have waited past the shop's own days.</summary>
    public bool IsUnclaimed(DateTime boxedUtc) => UnclaimedRule.Shops(Settings.UnclaimedAfterDays).Days(DayOf(boxedUtc), null).IsUnclaimedOn(Today);

    /// <summary>A time typed on the shop's clock, in UTC; the earlier of two where autumn repeats the hour.</summary>
    public DateTime ToUtc(DateTime local)
    {
        var offset = Zone.IsAmbiguousTime(local) ? Zone.GetAmbiguousTimeOffsets(local).Max() : Zone.GetUtcOffset(local);
        return DateTime.SpecifyKind(local - offset, DateTimeKind.Utc);
    }

    /// <summary>"Fri 27 Nov"; the year is added when it is not this one.</summary>
    public string Date(DateOnly day) =>
        day.ToString(day.Year == Today.Year ? "ddd d MMM" : "ddd d MMM yyyy", CultureInfo.InvariantCulture);

    public string Date(DateTime utc) => Date(DayOf(utc));

    /// <summary>"Fri 27 Nov, 3:05 PM".</summary>
    public string Moment(DateTime utc) => Date(utc) + ", " + Local(utc).ToString("h:mm tt", CultureInfo.InvariantCulture);

    /// <summary>"12.40 lb", at the bench's division.</summary>
    public string Print(Weight weight) => Settings.BenchDivision.Print(weight);

    /// <summary>At the rail's division, for whole carcasses.</summary>
    public string PrintRail(Weight weight) => Settings.RailDivision.Print(weight);
}
