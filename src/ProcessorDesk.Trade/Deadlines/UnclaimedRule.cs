namespace ProcessorDesk.Trade.Deadlines;

/// <summary>How long meat waits for its owner: before a notice is sent, and after it. Selling is no way out of it, ever.</summary>
/// <param name="Id">Lasting name; a shop's own figure names the one it stands for.</param>
/// <param name="BeforeNotice">From the day it is ready to the notice.</param>
/// <param name="AfterNotice">From the notice to what the shop may then do; null where the shop has set none, and then it waits on.</param>
/// <param name="Notice">How the notice is given.</param>
/// <param name="Source">Where it is published; empty for the shop's own written policy.</param>
/// <param name="Mark">How the source was read: A, B, C, M, or "–".</param>
public sealed record UnclaimedRule(
    string Id, CalendarPeriod BeforeNotice, CalendarPeriod? AfterNotice, string Notice, string Source, string Mark)
{
    /// <summary>Two months after a mailed notice. When the notice goes out is not said there: none is waited, until the shop sets its own.</summary>
    public static UnclaimedRule Iowa { get; } =
        new("unclaimed-iowa", new(0, CalendarUnit.Day), new(2, CalendarUnit.Month), "by mail", "Iowa Code 556H.1", "A");

    /// <summary>A shop's own written policy, in days.</summary>
    /// <param name="daysBefore">Days it waits from the day it is ready.</param>
    /// <param name="daysAfter">Days it waits from the notice; null where the policy does not say.</param>
    /// <param name="notice">How the notice is given.</param>
    public static UnclaimedRule Shops(int daysBefore, int? daysAfter = null, string notice = "by phone") => new(
        "unclaimed-shop", new(daysBefore, CalendarUnit.Day), daysAfter is { } days ? new(days, CalendarUnit.Day) : null, notice, "", "–");

    /// <summary>The days of one job's meat.</summary>
    /// <param name="readyOn">When it could first be fetched.</param>
    /// <param name="noticeOn">When the notice was given; null where it was not.</param>
    public UnclaimedDays Days(DateOnly readyOn, DateOnly? noticeOn) =>
        new(BeforeNotice.EndFrom(readyOn), noticeOn is { } sent ? AfterNotice?.EndFrom(sent) : null);
}
