namespace ProcessorDesk.Trade.Blending;

/// <summary>
/// Brings the exact mix onto the scale's division. The program is worked once more in whole divisions, with each bound of a
/// material drawn in to a whole one; no more than two materials are then between two divisions, and one or the other of
/// them is rounded up. Where that keeps a bound that plain rounding by largest remainder would break, it is taken.
/// </summary>
internal static class BlendRounding
{
    /// <returns>Divisions of each material, which sum to the block's, and what they do to the bounds, in sentences.</returns>
    public static (long[] Counts, IReadOnlyList<string> Notes) ToDivision(BlendWanted wanted, Ratio[] shares)
    {
        var total = wanted.Division.CountOf(wanted.Block);
        return InWholeDivisions(wanted, total)
            .Append(LargestRemainder.Split(total, shares))
            .Select(counts => (Counts: counts, Notes: Notes(wanted, total, counts)))
            .MinBy(rounded => (rounded.Notes.Count, Cost(wanted, rounded.Counts)));
    }

    private static IEnumerable<long[]> InWholeDivisions(BlendWanted wanted, long total)
    {
        var materials = wanted.Materials;
        var lows = materials.Select(material => Ratio.Of(-(-material.LeastShare.ToRatio() * Ratio.Of(total, 1)).Down(), 1));
        var highs = materials.Select(material => Ratio.Of(Math.Min(
            (material.MostShare.ToRatio() * Ratio.Of(total, 1)).Down(),
            material.OnHand is { } stock ? KeyedFigure.InDivisions(stock, wanted.Division).Down() : total), 1));
        if (new BlendProgram(wanted, Ratio.Of(total, 1), [.. lows], [.. highs]).Cheapest() is not { } exact)
            yield break;

        var whole = exact.Select(count => count.Down()).ToArray();
        var left = total - whole.Sum();
        if (left == 0)
            yield return whole;
        for (var i = 0; left == 1 && i < exact.Length; i++)
        {
            if (exact[i] > Ratio.Of(whole[i], 1))
                yield return [.. whole.Select((count, j) => j == i ? count + 1 : count)];
        }
    }

    private static List<string> Notes(BlendWanted wanted, long total, long[] counts)
    {
        var notes = new List<string>();
        var fat = Ratio.Sum(wanted.Materials.Zip(counts, (material, count) => material.Fat.ToRatio() * Ratio.Of(count, total)));
        if (fat > wanted.Fat.Most.ToRatio())
            notes.Add($"Rounding to {wanted.Division} makes the fat {PercentWords.Up(fat)}, over the {wanted.Fat.Most.Print()} wanted.");
        if (fat < wanted.Fat.Least.ToRatio())
            notes.Add($"Rounding to {wanted.Division} makes the fat {PercentWords.Down(fat)}, under the {wanted.Fat.Least.Print()} wanted.");
        for (var i = 0; i < counts.Length; i++)
        {
            var (material, share) = (wanted.Materials[i], Ratio.Of(counts[i], total));
            if (share > material.MostShare.ToRatio())
                notes.Add($"Rounding to {wanted.Division} makes {material.Name} {PercentWords.Up(share)} of the block, over its most of {material.MostShare.Print()}.");
            if (share < material.LeastShare.ToRatio())
                notes.Add($"Rounding to {wanted.Division} makes {material.Name} {PercentWords.Down(share)} of the block, under its least of {material.LeastShare.Print()}.");
            if (material.OnHand is { } stock && Ratio.Of(counts[i], 1) > KeyedFigure.InDivisions(stock, wanted.Division))
                notes.Add($"Rounding to {wanted.Division} takes up to one division more of {material.Name} than is on hand.");
        }

        return notes;
    }

    private static decimal Cost(BlendWanted wanted, long[] counts) =>
        wanted.Materials.Zip(counts, (material, count) => (decimal)material.Price.CentsPerPound * count).Sum();
}
