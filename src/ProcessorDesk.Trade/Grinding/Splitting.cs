namespace ProcessorDesk.Trade.Grinding;

/// <summary>
/// Splits the measured lean over what the owner asked for. Asks are served in order and the rest last; smallest run and
/// step are in green weight and cut an ask down or drop it, its lean going on to the asks after it and the rest; the plain
/// ground takes whatever nobody takes, be it below its own smallest run.
/// </summary>
public static class Splitting
{
    /// <param name="lean">The measured lean, zero or more; its figure as printed at the division is what is split.</param>
    /// <param name="asks">In order of importance; <see cref="SplitCheck"/> has found nothing wrong in them.</param>
    /// <param name="plainGround">The shop's plain ground product: its name and blend; its run and step are not looked at.</param>
    /// <exception cref="ArgumentException">A negative lean, or asks that <see cref="SplitCheck"/> refuses.</exception>
    public static GrindSplit Split(
        Weight lean, IReadOnlyList<GrindAsk> asks, GrindAsk plainGround, ScaleDivision division)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(lean, Weight.Zero);
        if (SplitCheck.Check([.. asks, plainGround with { Kind = AskKind.OwnLean }]) is [var finding, ..])
            throw new ArgumentException($"{finding.Field}: {finding.Text}", nameof(asks));

        var all = division.CountOf(lean);
        var left = all;
        var counts = new long[asks.Count];
        var reasons = new IReadOnlyList<string>[asks.Count];
        foreach (var i in InOrder(asks))
        {
            (counts[i], reasons[i]) = AskServing.Serve(asks[i], all, left, division);
            left -= counts[i];
        }

        var rest = asks.Any(ask => ask.Kind == AskKind.Rest);
        if (!rest || left > 0)
        {
            asks = [.. asks, plainGround];
            counts = [.. counts, left];
            reasons = [.. reasons, rest ? ["Takes the lean that is left over."] : []];
        }

        var leans = LeansOf(lean, counts, taker: rest && left == 0 ? InOrder(asks).Last() : counts.Length - 1, division);
        return new GrindSplit(lean, [.. asks.Select((ask, i) => Allotment.From(ask, leans[i], counts[i], reasons[i], division))]);
    }

    private static IEnumerable<int> InOrder(IReadOnlyList<GrindAsk> asks) =>
        Enumerable.Range(0, asks.Count).OrderBy(i => asks[i].Kind == AskKind.Rest);

    /// <summary>
    /// The leans in milligrams, which sum to the measured lean. Its odd milligrams beside the division go to the ask that
    /// takes what is left, or where that gets nothing to the last one that gets something: never to one dropped.
    /// </summary>
    private static Weight[] LeansOf(Weight lean, long[] counts, int taker, ScaleDivision division)
    {
        var last = counts[taker] > 0 || counts.All(count => count == 0) ? taker : Array.FindLastIndex(counts, count => count > 0);
        var order = Enumerable.Range(0, counts.Length).OrderBy(i => i == last).ToArray();
        var parts = division.Parts(lean, [.. order.Select(i => counts[i])]);
        var leans = new Weight[counts.Length];
        for (var i = 0; i < order.Length; i++)
            leans[order[i]] = parts[i];
        return leans;
    }
}
