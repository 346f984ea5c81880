using ProcessorDesk.Records;

namespace ProcessorDesk.SeedDemo;

/// <summary>The acts of a season, put down in any order and played by their time, each through the verbs' one place.</summary>
internal sealed class Season(RecordsContext records, WriteGate gate, DateTimeOffset now, TimeZoneInfo zone)
{
    /// <summary>By this hour all that happens on the season's last day has happened.</summary>
    private static readonly TimeOnly s_lastToday = new(10, 0);

    private readonly List<(DateTimeOffset At, Action Play)> _acts = [];
    private readonly DemoClock _clock = new();

    public RecordsContext Records => records;

    /// <summary>Today on the shop's calendar, the day the season ends.</summary>
    public DateOnly Today => DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(now, zone).DateTime);

    /// <summary>
    /// A moment on the shop's clock some days back. Where the demo is filled before the shop has got that far today, today's
    /// moments are the day before's: none is in the future, and none outside the shop's hours.
    /// </summary>
    public DateTimeOffset At(int daysAgo, int hour, int minute)
    {
        var today = daysAgo == 0 && now < OnClock(Today, s_lastToday) ? Today.AddDays(-1) : Today;
        return OnClock(today.AddDays(-daysAgo), new TimeOnly(hour, minute));
    }

    public DateOnly Day(int daysAgo) => Today.AddDays(-daysAgo);

    private DateTimeOffset OnClock(DateOnly day, TimeOnly time)
    {
        var local = day.ToDateTime(time);
        return new DateTimeOffset(local, zone.GetUtcOffset(local)).ToUniversalTime();
    }

    /// <summary>Puts an act down; it must be done when its time comes.</summary>
    public void Do(DateTimeOffset at, string verb, Func<Hand> hand, Func<Act, Outcome> work) =>
        _acts.Add((at, () => Run(at, verb, hand(), work)));

    public void Play()
    {
        foreach (var (_, play) in _acts.OrderBy(act => act.At))
            play();
    }

    /// <summary>Runs an act at once, outside the order of time: the set-up.</summary>
    public Outcome Run(DateTimeOffset at, string verb, Hand hand, Func<Act, Outcome> work)
    {
        _clock.Shows = at;
        var outcome = new Verbs(records, gate, _clock).Run(verb, hand, null, work);
        return outcome.IsDone
            ? outcome
            : throw new InvalidOperationException($"The demo could not {verb}: {string.Join(' ', outcome.Findings.Select(finding => finding.Text))}");
    }
}
