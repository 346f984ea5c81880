namespace ProcessorDesk.Trade.Process;

/// <summary>One probe's way down from one temperature to the next, as far as its entries show it.</summary>
/// <param name="When">From leaving the first to reaching the next, as far as the entries show it; gaps in it.</param>
/// <param name="Shown">Time between the two that the record shows, gaps counting for nothing: never more than it took.</param>
/// <param name="BeginShown">The record shows when it left the first.</param>
/// <param name="EndShown">The record shows that it came to the next.</param>
/// <param name="HasGap">Part of the time between lies in a gap.</param>
internal sealed record Passage(Stretch When, Ratio Shown, bool BeginShown, bool EndShown, bool HasGap)
{
    /// <summary>Down through two or more temperatures: from the last moment at the first of them, before it first came to the second.</summary>
    /// <param name="track">One probe.</param>
    /// <param name="hundredths">Each lower than the one before.</param>
    /// <returns>A passage between each two neighbours. Each begins where the one before ended.</returns>
    public static List<Passage> Falling(ProbeTrack track, IReadOnlyList<int> hundredths)
    {
        var gaps = track.Gaps();
        List<Passage> passages = [];
        var (from, shown) = Leaving(track, gaps, hundredths[0], hundredths[1]);
        var reached = true;
        foreach (var mark in hundredths.Skip(1))
        {
            var at = reached ? track.AtOrBelow(mark).FirstFrom(from) : null;
            var to = at ?? (reached ? track.Last : from);
            var inGaps = gaps.Within(from, to).Total;
            // Already there at the first entry, it came there before the record begins.
            var endShown = at is not null && (shown || to > track.First);
            passages.Add(new Passage(new Stretch(from, to), to - from - inGaps, shown, endShown, !inGaps.IsZero));
            // At the end of a gap it may have come there at any time inside the gap.
            (from, shown, reached) = (to, endShown && !gaps.LeadsTo(to), at is not null);
        }

        return passages;
    }

    /// <summary>When it left, or its first entry; and whether the record shows it. A gap while it was hot could hide that it was cold once.</summary>
    private static (Ratio Moment, bool Shown) Leaving(ProbeTrack track, Stretches gaps, int from, int to)
    {
        var hot = track.AtOrAbove(from);
        if (hot.First is not { } first)
            return (track.First, false);
        var left = hot.LastUpTo(track.AtOrBelow(to).FirstFrom(first) ?? track.Last) ?? first;
        return (left, gaps.Within(first, left).Total.IsZero);
    }
}
