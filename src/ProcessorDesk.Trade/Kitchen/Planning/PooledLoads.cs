namespace ProcessorDesk.Trade.Kitchen.Planning;

/// <summary>Divides a batch of owners who agreed to pooling over fillings of the mixer.</summary>
public static class PooledLoads
{
    /// <summary>Steps for one batch: well under 200 ms on a shop's PC (measured, see the docs).</summary>
    public const long UsualSteps = 3_000_000;

    /// <summary>
    /// No load is over the capacity, and none under the smallest good fill unless the total is too small for that. Within this: the
    /// fewest loads; then the fewest cuts, a contribution in p loads being cut p − 1 times; then the smallest difference between the
    /// fullest and the emptiest load, in divisions. Exact for up to sixteen contributions while the steps last; beyond that the
    /// best found, with bounds. Which of several equally good ways is taken depends on the weights; of equal weights the earlier part
    /// stands first, and loads come in the order of the parts in them. Lean and fat follow the green weight as in <see cref="MixerLoads"/>.
    /// </summary>
    /// <param name="parts">At least one, each with a green weight of a division or more; in the order of promise, then number.</param>
    /// <param name="capacity">The green weight the mixer holds; at least one division.</param>
    /// <param name="smallestFill">Zero where there is none; over the capacity it counts as the capacity.</param>
    /// <param name="division">Of the bench scale.</param>
    /// <exception cref="ArgumentException">No part, a part of nothing, or a mixer that holds nothing.</exception>
    public static LoadDivision Divide(
        IReadOnlyList<BatchPart> parts, Weight capacity, Weight smallestFill, ScaleDivision division, long steps = UsualSteps)
    {
        if (parts.Count == 0 || parts.Any(part => division.CountOf(part.Green) <= 0))
            throw new ArgumentException("A batch has parts, each with a green weight.", nameof(parts));
        if (division.CountDown(capacity) <= 0)
            throw new ArgumentException("A mixer holds at least one division.", nameof(capacity));

        var heaviest = Enumerable.Range(0, parts.Count).OrderByDescending(part => division.CountOf(parts[part].Green)).ToList();
        var fill = Math.Min(division.CountOf(smallestFill), division.CountDown(capacity));
        var question = LoadQuestion.Of(heaviest.ConvertAll(part => division.CountOf(parts[part].Green)), division.CountDown(capacity), fill);
        var (groups, cutsAtLeast, spreadAtLeast) = Best(question, steps);
        var loads = groups.Groups
            .Select(group => group.Select(member => heaviest[member]).Order().ToList())
            .OrderBy(group => group[0])
            .SelectMany(group => Even(parts, group, capacity, division));
        return new LoadDivision([.. loads], groups.Cuts, cutsAtLeast, groups.Spread, spreadAtLeast, question.Fill < fill);
    }

    private static (LoadGroups Groups, long CutsAtLeast, long SpreadAtLeast) Best(LoadQuestion question, long steps)
    {
        // A quarter of the steps is kept for the other way of looking, should this one not come to its end.
        var search = question.Weights.Count <= GroupSearch.MostContributions ? steps - steps / 4 : 0;
        var (found, spread) = search > 0
            ? GroupSearch.Find(question, new StepBudget(search))
            : (null, question.Total % question.Loads == 0 ? 0 : 1);
        if (found is not null && found.Spread == spread)
            return (found, found.Cuts, spread);
        var other = GroupsByHalves.Find(question, new StepBudget(steps - search));
        if (found is not null)
            return (other.IsBetterThan(found) ? other : found, found.Cuts, spread);
        return (other, FewestCuts.AtLeast(question), spread);
    }

    /// <summary>The parts of one group lined up over its own loads.</summary>
    private static IEnumerable<MixerLoad> Even(IReadOnlyList<BatchPart> parts, List<int> group, Weight capacity, ScaleDivision division) =>
        MixerLoads.Plan([.. group.Select(part => parts[part])], capacity, division)
            .Select(load => new MixerLoad([.. load.Pieces.Select(piece => piece with { Part = group[piece.Part] })]));
}
