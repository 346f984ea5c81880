using ProcessorDesk.Records;

namespace ProcessorDesk.SeedDemo;

/// <summary>The acts of a season, put down in any order and played by their time, each through the verbs' one place.</summary>
internal sealed class Season
{
    /// <summary>By this hour what a story tells of its last day by the clock has happened; before it, the season ends on the day before.</summary>
    private static readonly TimeOnly s_morningDone = new(9, 0);

    private static readonly TimeOnly s_closing = new(16, 55);

    private readonly List<(DateTimeOffset At, Action Play)> _acts = [];
    private readonly DemoClock _clock = new();
    private readonly WriteGate _gate;
    private readonly TimeZoneInfo _zone;
    private readonly DateTimeOffset _end;
    private IReadOnlyDictionary<string, int> _hands = new Dictionary<string, int>();

    public Season(RecordsContext records, WriteGate gate, DateTimeOffset now, TimeZoneInfo zone)
    {
        (Records, _gate, _zone) = (records, gate, zone);
        var local = TimeZoneInfo.ConvertTime(now, zone);
        var today = DateOnly.FromDateTime(local.DateTime);
        LastDay = TimeOnly.FromDateTime(local.DateTime) < s_morningDone ? today.AddDays(-1) : today;
        var closing = OnClock(LastDay, s_closing);
        _end = now < closing ? now : closing;
    }

    public RecordsContext Records { get; }

    /// <summary>The day the season ends on the shop's calendar: the day it is filled, or the day before while that one is young.</summary>
    public DateOnly LastDay { get; }

    /// <summary>A moment on the shop's clock some days before the last one. On the last day itself before nine, so that it lies in the past.</summary>
    public DateTimeOffset At(int daysAgo, int hour, int minute) => OnClock(Day(daysAgo), new TimeOnly(hour, minute));

    /// <summary>A moment of the last hour before the season ends, within the shop's hours.</summary>
    /// <param name="minutes">At most 60.</param>
    public DateTimeOffset JustNow(int minutes) => _end.AddMinutes(-minutes);

    public DateOnly Day(int daysAgo) => LastDay.AddDays(-daysAgo);

    /// <summary>The shop's day of a moment.</summary>
    public DateOnly DayOf(DateTimeOffset at) => DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(at, _zone).DateTime);

    /// <summary>Puts an act down, of the hand of these initials at a station; it must be done when its time comes.</summary>
    public void Do(DateTimeOffset at, string verb, string initials, string station, Func<Act, Outcome> work) =>
        _acts.Add((at, () => Run(at, verb, new Hand(_hands[initials], station), work)));

    public void Play()
    {
        _hands = DemoStaff.Ids(Records);
        foreach (var (_, play) in _acts.OrderBy(act => act.At))
            play();
    }

    /// <summary>Runs an act at once, outside the order of time: the set-up.</summary>
    public Outcome Run(DateTimeOffset at, string verb, Hand hand, Func<Act, Outcome> work)
    {
        _clock.Shows = at;
        var outcome = new Verbs(Records, _gate, _clock).Run(verb, hand, null, work);
        return outcome.IsDone
            ? outcome
            : throw new InvalidOperationException($"The demo could not {verb}, {at:u}: {string.Join(' ', outcome.Findings.Select(finding => finding.Text))}");
    }

    private DateTimeOffset OnClock(DateOnly day, TimeOnly time)
    {
        var local = day.ToDateTime(time);
        return new DateTimeOffset(local, _zone.GetUtcOffset(local)).ToUniversalTime();
    }
}
