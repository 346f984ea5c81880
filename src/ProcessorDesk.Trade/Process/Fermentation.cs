namespace ProcessorDesk.Trade.Process;

/// <summary>A fermentation held against the degree-hours above 60 °F that it may take to pH 5.3.</summary>
/// <remarks>
/// Sour enough is the first moment of which every entry is at or below the target; acidity is not filled in between entries. Degree-hours are
/// counted from the first temperature to that moment, each probe for itself, and the most counts; the limit goes by the highest temperature of any
/// probe until then. More than the limit "does not meet", sour or not, since gaps only hide more. Not sour yet, a gap on the way, or
/// temperatures that begin after or end before the moment: "not shown by the record".
/// </remarks>
public static class Fermentation
{
    /// <summary>From readings.</summary>
    /// <param name="readings">Of the product or its chamber, from the time it goes in; in any order.</param>
    /// <param name="acidity">In any order.</param>
    /// <param name="longestGap">Between temperatures; null for <see cref="LongestGap.Fermenting"/>.</param>
    public static FermentationCheck Check(
        IEnumerable<ProcessReading> readings, IEnumerable<AcidityReading> acidity, TimeSpan? longestGap = null)
    {
        var tracks = ProbeTrack.Of(readings, longestGap ?? LongestGap.Fermenting, entries => entries.Max());
        var sour = SourMoments(acidity).Order().Select(moment => (DateTime?)moment).FirstOrDefault();
        if (tracks.Count == 0)
            return Of(ProcessVerdict.NotShown, Ratio.Zero, null, sour, sour is not null);
        var probes = tracks.Select(track => Probe(track, sour is { } at ? Ratio.Of(at.Ticks, 1) : null)).ToList();
        var highest = Temperature.FromHundredthsFahrenheit((int)-(-probes.Max(probe => probe.Highest)).Down());
        var (verdict, most, times) = probes.Select(probe => (Verdict: Judge(probe.DegreeHours, highest, probe.Complete), probe.DegreeHours, probe.Times))
            .OrderBy(probe => probe.Verdict).ThenByDescending(probe => probe.DegreeHours).First();
        return Of(verdict, most, highest, sour, sour is not null) with { Times = times };
    }

    /// <summary>From stages at a constant temperature each, up to the moment when the acidity was read.</summary>
    /// <param name="stages">In any order.</param>
    /// <param name="reached">The acidity at the end; null where it was not read.</param>
    public static FermentationCheck Check(IReadOnlyList<FermentationStage> stages, Ph? reached)
    {
        foreach (var stage in stages)
            ArgumentOutOfRangeException.ThrowIfLessThan(stage.Lasted, TimeSpan.Zero, nameof(stages));
        var sour = reached <= DegreeHourLimit.Target;
        var held = stages.Where(stage => stage.Lasted > TimeSpan.Zero).ToList();
        if (held.Count == 0)
            return Of(ProcessVerdict.NotShown, Ratio.Zero, null, null, sour);
        var sum = held.Aggregate(Ratio.Zero, (sum, stage) => sum + DegreeHours.Of(stage.Chamber, stage.Lasted, DegreeHourLimit.Base));
        var highest = held.Max(stage => stage.Chamber);
        return Of(Judge(sum, highest, sour), sum, highest, null, sour);
    }

    private static IEnumerable<DateTime> SourMoments(IEnumerable<AcidityReading> acidity) =>
        from reading in acidity
        group reading.Reading by reading.At into moment
        where moment.Max() <= DegreeHourLimit.Target
        select moment.Key;

    private static (Ratio DegreeHours, IReadOnlyList<WarmTime> Times, Ratio Highest, bool Complete) Probe(ProbeTrack track, Ratio? sour)
    {
        var until = sour ?? track.Last;
        var (times, highest) = DegreeHours.Of(track, DegreeHourLimit.Base, until);
        var complete = sour is not null && until >= track.First && until <= track.Last && track.Gaps().Within(track.First, until).Total.IsZero;
        return (Ratio.Sum(times.Select(time => time.DegreeHours)), times, highest, complete);
    }

    private static ProcessVerdict Judge(Ratio degreeHours, Temperature highest, bool complete) =>
        degreeHours > Ratio.Of(DegreeHourLimit.For(highest).Most, 1) ? ProcessVerdict.DoesNotMeet
        : complete ? ProcessVerdict.Meets
        : ProcessVerdict.NotShown;

    private static FermentationCheck Of(ProcessVerdict verdict, Ratio exact, Temperature? highest, DateTime? sourAt, bool sour)
    {
        DegreeHourLimit? limit = highest is { } top ? DegreeHourLimit.For(top) : null;
        var check = new FermentationCheck(verdict, exact, limit, highest, sourAt, []);
        return check with { Findings = [.. FermentationFindings.Of(verdict, check.DegreeHours, limit, sour)] };
    }
}
