using FsCheck.Xunit;
using ProcessorDesk.Trade.Process;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Process;

/// <summary>What the verdicts on a record promise, whatever is in it.</summary>
[Properties(MaxTest = 1000, Arbitrary = [typeof(ProcessCases)])]
public sealed class ProcessPromises
{
    [Property]
    public void The_order_of_entries_does_not_matter(ProcessCase record)
    {
        List<ProcessReading> turned = [.. record.Readings.Reverse()];
        List<ProcessReading> mixed = [.. record.Readings.OrderBy(each => each.Reading).ThenBy(each => each.At)];

        Assert.Equal(Said(record, record.Readings), Said(record, turned));
        Assert.Equal(Said(record, record.Readings), Said(record, mixed));
    }

    [Property]
    public void An_entry_written_twice_counts_once(ProcessCase record) =>
        Assert.Equal(Said(record, record.Readings), Said(record, [.. record.Readings, .. record.Readings]));

    [Property]
    public void A_lower_entry_never_helps_a_cooking_record(ProcessCase record)
    {
        if (record.Readings.Count == 0)
            return;
        var entry = record.Readings[record.Pick(record.Readings.Count)];
        List<ProcessReading> lower = [.. record.Readings, entry with { Reading = Temperature.FromHundredthsFahrenheit(entry.Reading.HundredthsFahrenheit - 1 - record.Any % 3000) }];

        Assert.True(Lethal(record, lower).Verdict <= Lethal(record, record.Readings).Verdict);
    }

    [Property]
    public void A_further_probe_never_helps_a_cooking_record(ProcessCase record, ProcessCase other)
    {
        if (record.Readings.Count == 0 || other.Readings.Count == 0)
            return;
        var (first, last) = (record.Readings.Min(each => each.At), record.Readings.Max(each => each.At));
        List<ProcessReading> more = [.. record.Readings, .. other.Readings.Where(each => each.At >= first && each.At <= last).Select(Apart)];
        List<ProcessReading> longer = [.. record.Readings, .. other.Readings.Select(Apart)];

        Assert.True(Lethal(record, more).Verdict <= Lethal(record, record.Readings).Verdict);
        Assert.True(Lethal(record, longer).Verdict != ProcessVerdict.Meets || Lethal(record, record.Readings).Verdict == ProcessVerdict.Meets);
    }

    [Property]
    public void A_further_probe_never_helps_a_chilling_record(ProcessCase record, ProcessCase other)
    {
        if (record.Readings.Count == 0)
            return;

        Assert.True(Cool(record, [.. record.Readings, .. other.Readings.Select(Apart)]).Verdict <= Cool(record, record.Readings).Verdict);
    }

    [Property]
    public void An_entry_on_the_line_between_two_changes_nothing(ProcessCase record)
    {
        foreach (var lower in new[] { true, false })
        {
            var entries = record.Readings.GroupBy(each => (each.Probe, each.At))
                .Select(same => lower ? same.MinBy(each => each.Reading) : same.MaxBy(each => each.Reading))
                .OrderBy(each => each.Probe).ThenBy(each => each.At).ToList();
            var between = entries.Zip(entries.Skip(1))
                .Where(pair => pair.First.Probe == pair.Second.Probe && pair.Second.At - pair.First.At <= record.LongestGap)
                .Select(pair => new ProcessReading(
                    pair.First.At + (pair.Second.At - pair.First.At) / 2,
                    pair.First.Probe,
                    Temperature.FromHundredthsFahrenheit((pair.First.Reading.HundredthsFahrenheit + pair.Second.Reading.HundredthsFahrenheit) / 2)));

            Assert.Equal(Said(record, entries), Said(record, [.. entries, .. between]));
        }
    }

    [Property]
    public void A_shorter_longest_gap_never_makes_a_record_meet(ProcessCase record)
    {
        var shorter = record with { LongestGap = record.LongestGap / (1 + record.Pick(4)) - TimeSpan.FromTicks(record.LongestGap.Ticks / 9) };

        Assert.True(Lethal(shorter, record.Readings).Verdict != ProcessVerdict.Meets || Lethal(record, record.Readings).Verdict == ProcessVerdict.Meets);
    }

    [Property]
    public void A_gap_cut_into_a_record_never_makes_it_meet(ProcessCase record)
    {
        var hot = new ProcessReading(Cook.Start, 1, Temperature.FromFahrenheit(135m));
        List<ProcessReading> whole = [hot, .. record.Readings.Where(each => each.Probe == 1 && each.At > Cook.Start)];
        var cut = Cut(whole, record);

        Assert.True(Cool(record, cut).Verdict != ProcessVerdict.Meets || Cool(record, whole).Verdict == ProcessVerdict.Meets);
        Assert.True(Lethal(record, cut).Verdict != ProcessVerdict.Meets || Lethal(record, whole).Verdict == ProcessVerdict.Meets);
    }

    [Property]
    public void A_gap_never_makes_a_fermentation_meet(ProcessCase record)
    {
        var sour = new AcidityReading(Cook.Start.AddSeconds(record.Pick(40_000)), DegreeHourLimit.Target);
        var whole = Fermentation.Check(record.Readings, [sour], record.LongestGap);
        var shorter = Fermentation.Check(record.Readings, [sour], record.LongestGap / 2);

        Assert.True(shorter.Verdict != ProcessVerdict.Meets || whole.Verdict == ProcessVerdict.Meets);
        Assert.Equal(whole.Verdict, Fermentation.Check(record.Readings.Reverse(), [sour, sour], record.LongestGap).Verdict);
    }

    /// <summary>Counted in steps of ten seconds, by decimals alone: a step off, at most, for each entry.</summary>
    [Property]
    public void The_time_found_is_what_a_count_of_moments_gives(ProcessCase record)
    {
        var check = Lethal(record, record.Readings);
        if (check.Row is not { } row)
            return;
        var probes = record.Readings.GroupBy(each => each.Probe).Select(probe => probe.GroupBy(each => each.At)
            .Select(same => same.MinBy(each => each.Reading)).OrderBy(each => each.At).ToList()).ToList();
        var needed = row.At.Fahrenheit + record.Accuracy.Fahrenheit;
        var counted = Enumerable.Range(0, 1 + (int)((record.Readings.Max(each => each.At) - Cook.Start).Ticks / (10 * TimeSpan.TicksPerSecond))).Count(step => probes.All(probe => HotFor(probe, Cook.Start.AddSeconds(step * 10 + 5), needed, record.LongestGap)));

        Assert.InRange((decimal)check.Found.Ticks / TimeSpan.TicksPerSecond, counted * 10m - 10m * record.Readings.Count, counted * 10m + 10m * record.Readings.Count);
    }

    private static bool HotFor(List<ProcessReading> probe, DateTime moment, decimal needed, TimeSpan longestGap)
    {
        var after = probe.FindIndex(each => each.At >= moment);
        if (after <= 0 || probe[after].At - probe[after - 1].At > longestGap)
            return false;
        var (from, to) = (probe[after - 1], probe[after]);
        var part = (decimal)(moment - from.At).Ticks / (to.At - from.At).Ticks;
        return from.Reading.Fahrenheit + part * (to.Reading.Fahrenheit - from.Reading.Fahrenheit) >= needed;
    }

    /// <summary>Without the entries strictly between two of them that lie further apart than the longest gap.</summary>
    private static List<ProcessReading> Cut(List<ProcessReading> whole, ProcessCase record)
    {
        var times = whole.Select(each => each.At).Distinct().Order().ToList();
        var from = times[record.Pick(times.Count)];
        var to = times.Where(time => time - from > record.LongestGap).Order().FirstOrDefault(DateTime.MaxValue);
        return to == DateTime.MaxValue ? whole : [.. whole.Where(each => each.At <= from || each.At >= to)];
    }

    private static ProcessReading Apart(ProcessReading reading) => reading with { Probe = reading.Probe + 10 };

    private static LethalityCheck Lethal(ProcessCase record, IEnumerable<ProcessReading> readings) =>
        Lethality.Check(LethalityKind.Meat65Log, readings, record.Accuracy, record.LongestGap);

    private static CoolingCheck Cool(ProcessCase record, IEnumerable<ProcessReading> readings) =>
        Cooling.Check(CoolingOptions.One, readings, record.LongestGap);

    /// <summary>Everything that is said of a record, cooking, come-up and chilling.</summary>
    private static string Said(ProcessCase record, IReadOnlyList<ProcessReading> readings)
    {
        var (cook, chill) = (Lethal(record, readings), Cool(record, readings));
        return $"{cook.Words} {cook.Row} {cook.Found} {cook.ComeUp} {string.Join(' ', cook.Findings)} {chill.Words} {string.Join(' ', chill.Steps)} {string.Join(' ', chill.Findings)}";
    }
}
