namespace ProcessorDesk.Trade.Process;

/// <summary>How long the meat took from 50 to 130 °F: each probe for itself, the slowest counts.</summary>
/// <remarks>
/// The clock runs from the last moment shown at or below 50 °F to the first at or above 130, through gaps as well, because a gap can only
/// make it look longer. At most six hours by the clock meets. More than six hours without the gaps does not meet, whether or not 130 °F
/// was reached. Everything else is not shown.
/// </remarks>
/// <param name="Verdict">Of the come-up alone; the table row has a verdict of its own.</param>
/// <param name="Found">Up to the second, under a minute to its tenth; at least that much where the verdict is "not shown".</param>
/// <param name="Minutes">By the clock, exactly; what is shown where that is too long and one end is not in the record; null otherwise.</param>
public sealed record ComeUp(ProcessVerdict Verdict, TimeSpan Found, Ratio? Minutes)
{
    private static readonly string s_allowed = ProcessTime.Print(LethalityTables.ComeUp);

    /// <summary>By the clock it took too long, and only what a gap hides can have made it shorter.</summary>
    public bool MayBeTooLong =>
        Verdict == ProcessVerdict.NotShown && Minutes * Ratio.Of(TimeSpan.TicksPerMinute, 1) > LethalityTables.ComeUp.Ticks();

    /// <summary>Null where the record shows it short enough.</summary>
    public Finding? Finding => Verdict switch
    {
        ProcessVerdict.Meets => null,
        ProcessVerdict.DoesNotMeet => Say($"From 50 to 130 °F took {ProcessTime.Print(Found)} or more; the table is for at most {s_allowed}."),
        ProcessVerdict.NotShown => Say("The record does not show how long the meat took from 50 to 130 °F. Begin the readings when it goes in."),
    };

    internal static ComeUp Of(IEnumerable<ProbeTrack> tracks) =>
        tracks.Select(Of).OrderBy(probe => probe.Verdict).ThenByDescending(probe => probe.Found).FirstOrDefault()
        ?? new ComeUp(ProcessVerdict.NotShown, TimeSpan.Zero, null);

    private static ComeUp Of(ProbeTrack track)
    {
        var cool = track.AtOrBelow(LethalityTables.ComeUpFrom.HundredthsFahrenheit);
        var reached = track.AtOrAbove(LethalityTables.ComeUpTo.HundredthsFahrenheit).FirstFrom(cool.First ?? track.First);
        var left = cool.LastUpTo(reached ?? track.Last);
        var (from, to) = (left ?? track.First, reached ?? track.Last);
        var shown = to - from - track.Gaps().Within(from, to).Total;
        var most = LethalityTables.ComeUp.Ticks();
        Ratio? byTheClock = left is null || reached is null ? null : (to - from) / Ratio.Of(TimeSpan.TicksPerMinute, 1);
        return shown > most ? new ComeUp(ProcessVerdict.DoesNotMeet, ProcessTime.Up(shown), byTheClock ?? shown / Ratio.Of(TimeSpan.TicksPerMinute, 1))
            : byTheClock is not null && to - from <= most ? new ComeUp(ProcessVerdict.Meets, ProcessTime.Up(to - from), byTheClock)
            : new ComeUp(ProcessVerdict.NotShown, ProcessTime.Up(shown), byTheClock);
    }

    private Finding Say(string text) =>
        new("", text, ProcessTime.Print(Found), "at most " + s_allowed, LethalityTables.ComeUpSource);
}
