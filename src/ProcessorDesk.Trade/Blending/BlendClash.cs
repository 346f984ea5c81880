namespace ProcessorDesk.Trade.Blending;

/// <summary>
/// Why no mix keeps all the bounds of a block: a smallest set of them that cannot be kept together, of which none can be left
/// out. Each bound in turn is left away, and stays away where the rest still clash; the loosest are tried first, and fat
/// before all, so that bounds that clash whatever the fat are named as such.
/// </summary>
internal static class BlendClash
{
    /// <returns>One finding for each bound of the set; the first says the whole.</returns>
    public static IReadOnlyList<Finding> Findings(BlendWanted wanted)
    {
        var clash = Smallest(wanted);
        return
        [
            Whole(wanted, clash),
            .. clash.Skip(1).Select(bound => new Finding(bound.Field, $"Part of the same clash: {bound.Words(wanted)}.")),
        ];
    }

    private static List<BlendBound> Smallest(BlendWanted wanted)
    {
        var all = BlendBound.Of(wanted).ToList();
        var kept = all;
        foreach (var bound in all.OrderBy(bound => !bound.IsOnFat).ThenBy(bound => bound.Tightness))
        {
            var without = kept.Where(other => other != bound).ToList();
            if (!CanBeKept(wanted, without))
                kept = without;
        }

        return kept;
    }

    private static bool CanBeKept(BlendWanted wanted, List<BlendBound> bounds)
    {
        var program = BlendProgram.InParts(wanted, bounds);
        return program.CanBeMixed() && bounds.All(bound => bound.Kind switch
        {
            BlendBoundKind.FatMost => program.LeastFat() <= bound.Part,
            BlendBoundKind.FatLeast => program.MostFat() >= bound.Part,
            BlendBoundKind.LeastShare or BlendBoundKind.MostShare or BlendBoundKind.OnHand => true,
        });
    }

    private static Finding Whole(BlendWanted wanted, List<BlendBound> clash)
    {
        var (first, program) = (clash[0], BlendProgram.InParts(wanted, clash));
        return first.Kind switch
        {
            BlendBoundKind.FatMost => OfFat("leanest", "Allow more fat", "a leaner meat", PercentWords.Up(program.LeastFat()), "or more"),
            BlendBoundKind.FatLeast => OfFat("fattest", "Allow less fat", "a fatter one", PercentWords.Down(program.MostFat()), "or less"),
            BlendBoundKind.LeastShare when clash.All(bound => bound.Kind == BlendBoundKind.LeastShare) =>
                OfShares($"That is {PercentWords.Up(Ratio.Sum(program.Lows))} of the block, more than all of it: lower one of them."),
            BlendBoundKind.LeastShare => OfShares("The least is more than the most: lower the one or raise the other."),
            BlendBoundKind.MostShare or BlendBoundKind.OnHand =>
                OfShares($"That is only {PercentWords.Down(Ratio.Sum(program.Highs))} of the block: raise one of them, add a material, or make a smaller block."),
        };

        Finding OfFat(string end, string ease, string add, string reach, string side)
        {
            var or = clash.Count == 1 ? $" or add {add}" : $", add {add}, or ease one of the other bounds";
            return new Finding(
                first.Field, $"No mix keeps {Listed()}: the {end} comes to {reach} fat. {ease}{or}.", PercentWords.Down(first.Part), $"{reach} {side}");
        }

        Finding OfShares(string why) => new(first.Field, $"No mix keeps {Listed()}. {why}");

        string Listed() => string.Join("; ", clash.Select(bound => bound.Words(wanted)));
    }
}
