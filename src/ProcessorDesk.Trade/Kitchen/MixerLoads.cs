namespace ProcessorDesk.Trade.Kitchen;

/// <summary>Divides a batch over fillings of the mixer.</summary>
public static class MixerLoads
{
    /// <summary>
    /// The fewest loads that the mixer holds, as even as the division allows, the odd divisions to the first ones. Parts are
    /// taken in their order and cut where a load is full. Lean and fat of a part follow its green weight. Every part sums to
    /// itself, to the milligram and as printed.
    /// </summary>
    /// <param name="parts">At least one, each with a green weight of a division or more.</param>
    /// <param name="capacity">The green weight the mixer holds; at least one division.</param>
    /// <param name="division">Of the bench scale.</param>
    /// <exception cref="ArgumentException">No part, a part of nothing, or a mixer that holds nothing.</exception>
    public static IReadOnlyList<MixerLoad> Plan(IReadOnlyList<BatchPart> parts, Weight capacity, ScaleDivision division)
    {
        if (parts.Count == 0 || parts.Any(part => division.CountOf(part.Green) <= 0))
            throw new ArgumentException("A batch has parts, each with a green weight.", nameof(parts));
        var full = division.CountDown(capacity);
        if (full <= 0)
            throw new ArgumentException("A mixer holds at least one division.", nameof(capacity));

        var greens = parts.Select(part => division.CountOf(part.Green)).ToArray();
        var total = greens.Sum();
        var loads = (total + full - 1) / full;
        var room = LargestRemainder.Split(total, [.. Enumerable.Repeat(1L, checked((int)loads))]);
        return Of(parts, Fill(greens, room), division);
    }

    /// <summary>Loads arranged by hand. Lean and fat of a part follow its green weight, as in <see cref="Plan"/>; two pieces of a part in one load are one.</summary>
    /// <param name="loads">What goes into each: the place of a part among <paramref name="parts"/>, and how much of it.</param>
    /// <exception cref="ArgumentException">The pieces of a part do not add up to it.</exception>
    public static IReadOnlyList<MixerLoad> Arrange(IReadOnlyList<BatchPart> parts, IReadOnlyList<IReadOnlyList<(int Part, Weight Green)>> loads, ScaleDivision division)
    {
        List<List<Cut>> cuts = [.. loads.Select(load => load.GroupBy(piece => piece.Part).Select(pieces => new Cut(pieces.Key, pieces.Sum(piece => division.CountOf(piece.Green)))).ToList())];
        if (parts.Index().Any(part => cuts.SelectMany(load => load).Where(cut => cut.Part == part.Index).Sum(cut => cut.Count) != division.CountOf(part.Item.Green)))
            throw new ArgumentException("The pieces of a part add up to it.", nameof(loads));
        return Of(parts, cuts, division);
    }

    private static MixerLoad[] Of(IReadOnlyList<BatchPart> parts, List<List<Cut>> loads, ScaleDivision division) =>
        [.. loads.Select(load => new MixerLoad([.. load.Select(piece => piece.Of(parts[piece.Part], division, loads))]))];

    private static List<List<Cut>> Fill(long[] greens, long[] room)
    {
        var loads = new List<List<Cut>>();
        var (part, left) = (0, greens[0]);
        foreach (var size in room)
        {
            var load = new List<Cut>();
            for (var space = size; space > 0;)
            {
                var taken = Math.Min(space, left);
                load.Add(new Cut(part, taken));
                (space, left) = (space - taken, left - taken);
                if (left == 0 && ++part < greens.Length)
                    left = greens[part];
            }

            loads.Add(load);
        }

        return loads;
    }

    /// <summary>A part's divisions of green weight in one load.</summary>
    private sealed record Cut(int Part, long Count)
    {
        public LoadPiece Of(BatchPart part, ScaleDivision division, List<List<Cut>> loads)
        {
            var cuts = loads.SelectMany(load => load).Where(cut => cut.Part == Part).ToList();
            var (at, counts) = (cuts.FindIndex(cut => ReferenceEquals(cut, this)), cuts.ConvertAll(cut => cut.Count));
            return new LoadPiece(
                Part,
                division.Split(part.Lean, counts)[at],
                division.Split(part.AddedFat, counts)[at],
                division.Parts(part.Green, counts)[at]);
        }
    }
}
