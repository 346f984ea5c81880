namespace ProcessorDesk.Trade.Kitchen.Planning;

/// <summary>
/// A good way for more contributions than can be gone through: groups are taken off one by one, each the best of the heaviest and the
/// lightest that are left; then some groups at a time are put together and divided anew, as long as that makes it better.
/// </summary>
internal static class GroupsByHalves
{
    /// <summary>Contributions looked at together; each one more doubles the work.</summary>
    private const int Together = 10;

    /// <summary>Contributions divided anew together.</summary>
    private const int Redone = 12;

    /// <param name="question">Its contributions from the heaviest to the lightest.</param>
    public static LoadGroups Find(LoadQuestion question, StepBudget budget)
    {
        var (tight, fair) = (Taken(question, isFair: false, budget), Taken(question, isFair: true, budget));
        var best = fair.IsBetterThan(tight) ? fair : tight;
        for (var improved = true; improved && !budget.IsSpent;)
        {
            var better = Neighbours(best).Select(some => Redivided(best, some, budget)).FirstOrDefault(other => other is not null);
            improved = better is not null;
            best = better ?? best;
        }

        return best;
    }

    private static LoadGroups Taken(LoadQuestion question, bool isFair, StepBudget budget)
    {
        var (groups, left) = (new List<IReadOnlyList<int>>(), Enumerable.Range(0, question.Weights.Count).ToList());
        while (left.Count > Together && TakeOff(question, left, isFair) is { } group && budget.Take())
        {
            groups.Add(group);
            left.RemoveAll(group.Contains);
        }

        var rest = question.Part(left);
        if (!rest.IsFilled(rest.Total))
            return LoadGroups.Whole(question);
        var last = left.Count <= Together ? GroupSearch.Find(rest, budget).Groups : null;
        return new LoadGroups(question, [.. groups, .. (last ?? LoadGroups.Whole(rest)).Groups.Select(group => (IReadOnlyList<int>)[.. group.Select(member => left[member])])]);
    }

    /// <summary>
    /// The group in the fewest loads that takes no more room than there is, and of these the one that takes the least; or, to be fair, no
    /// more than its share of the room, and of these the most, so that its loads are near the average of what is left. Null where there is none.
    /// </summary>
    private static List<int>? TakeOff(LoadQuestion question, List<int> left, bool isFair)
    {
        var sum = left.Sum(member => question.Weights[member]);
        var (loads, room) = (question.LoadsOf(sum), question.RoomIn(sum));
        List<int> near = [.. left.Take(Together / 2), .. left.Skip(left.Count - Together / 2)];
        return Enumerable.Range(0, 1 << (Together - 1))
            .Select(set => near.Where((_, i) => i == 0 || (set >> (i - 1) & 1) == 1).ToList())
            .Select(group => (Group: group, Sum: group.Sum(member => question.Weights[member])))
            .Where(one => question.IsFilled(one.Sum) && (isFair ? question.RoomIn(one.Sum) * loads <= room * question.LoadsOf(one.Sum) : question.RoomIn(one.Sum) <= room))
            .OrderBy(one => question.LoadsOf(one.Sum))
            .ThenBy(one => isFair ? -question.RoomIn(one.Sum) : question.RoomIn(one.Sum))
            .Select(one => one.Group)
            .FirstOrDefault();
    }

    /// <summary>From each group on, with those that follow at each distance, as many as can be gone through together.</summary>
    private static IEnumerable<List<int>> Neighbours(LoadGroups groups)
    {
        var count = groups.Groups.Count;
        foreach (var (distance, first) in from distance in Enumerable.Range(1, Math.Max(count - 1, 0)) from first in Enumerable.Range(0, count) select (distance, first))
        {
            List<int> some = [first];
            for (var next = distance; next < count && some.Append((first + next) % count).Sum(group => groups.Groups[group].Count) <= Redone; next++)
                some.Add((first + next) % count);
            if (some.Count > 1)
                yield return some;
        }
    }

    /// <summary>Null where dividing some groups anew makes the whole no better.</summary>
    private static LoadGroups? Redivided(LoadGroups groups, List<int> some, StepBudget budget)
    {
        List<int> members = [.. some.SelectMany(group => groups.Groups[group]).Order()];
        if (GroupSearch.Find(groups.Question.Part(members), budget).Groups is not { } part)
            return null;
        var others = groups.Groups.Where((_, i) => !some.Contains(i));
        var anew = new LoadGroups(groups.Question, [.. others, .. part.Groups.Select(group => (IReadOnlyList<int>)[.. group.Select(member => members[member])])]);
        return anew.IsBetterThan(groups) ? anew : null;
    }
}
