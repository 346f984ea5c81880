namespace ProcessorDesk.Trade.Process;

/// <summary>A chilling record held against a published cooling option.</summary>
/// <remarks>
/// Each probe is judged for itself and the slowest counts. The first step runs from the last moment at or above its first temperature
/// to the first at or below its second, and each further step from there to its own. Of two entries of one probe at one moment the
/// higher counts. A step "does not meet" when the time shown, gaps counting for nothing, is longer than allowed, whether or not its
/// end was reached. It is "not shown by the record" when one of its two crossings is not in the record, or a gap lies between them, or before the first of them after the meat was hot.
/// A step without a time is met by reaching its end.
/// </remarks>
public static class Cooling
{
    /// <param name="option">The option of the shop's written process.</param>
    /// <param name="readings">The chilling, from before it drops below the first temperature; in any order.</param>
    /// <param name="longestGap">Null for <see cref="LongestGap.Cooling"/>.</param>
    /// <param name="confirmed">The shop has confirmed an option that is off until then.</param>
    public static CoolingCheck Check(
        CoolingOption option, IEnumerable<ProcessReading> readings, TimeSpan? longestGap = null, bool confirmed = false)
    {
        var tracks = ProbeTrack.Of(readings, longestGap ?? LongestGap.Cooling, entries => entries.Max());
        List<int> marks = [option.Steps[0].From.HundredthsFahrenheit, .. option.Steps.Select(step => step.To.HundredthsFahrenheit)];
        var passages = tracks.Select(track => (track.Probe, Steps: Passage.Falling(track, marks))).ToList();
        var steps = option.Steps.Select((step, i) => Slowest(step, passages.Select(probe => Judge(step, probe.Probe, probe.Steps[i])))).ToList();
        if (option.OffUntilConfirmed && !confirmed)
            return new CoolingCheck(ProcessVerdict.NotShown, option, steps, [CoolingFindings.Off(option)]);
        var findings = tracks.Count == 0 ? [CoolingFindings.NoReadings(option)] : steps.SelectMany(step => CoolingFindings.Of(step, option)).ToList();
        return new CoolingCheck(steps.Min(step => step.Verdict), option, steps, findings);
    }

    private static CoolingStepCheck Slowest(CoolingStep step, IEnumerable<CoolingStepCheck> probes) =>
        probes.OrderBy(probe => probe.Verdict).ThenByDescending(probe => probe.Shown).FirstOrDefault()
        ?? new CoolingStepCheck(step, null, ProcessVerdict.NotShown, Ratio.Zero, null);

    private static CoolingStepCheck Judge(CoolingStep step, int probe, Passage passage)
    {
        var verdict = step.AtMost switch
        {
            null => passage.EndShown ? ProcessVerdict.Meets : ProcessVerdict.NotShown,
            { } most when passage.Shown > most.Ticks() => ProcessVerdict.DoesNotMeet,
            _ => passage is { BeginShown: true, EndShown: true, HasGap: false } ? ProcessVerdict.Meets : ProcessVerdict.NotShown,
        };
        return new CoolingStepCheck(step, probe, verdict, passage.Shown / Ratio.Of(TimeSpan.TicksPerMinute, 1), passage.BeginShown ? new DateTime(passage.When.From.Down(), DateTimeKind.Utc) : null) { When = passage.When };
    }
}
