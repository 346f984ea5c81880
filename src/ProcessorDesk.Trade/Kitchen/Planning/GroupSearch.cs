using System.Numerics;

namespace ProcessorDesk.Trade.Kitchen.Planning;

/// <summary>
/// Finds the most groups by going through the sets of contributions, then the best balanced of the ways to make so many. Sets
/// are bit masks; what is left over is always divided by the group of its first member, so each way is met once.
/// </summary>
internal sealed class GroupSearch
{
    /// <summary>The tables hold an entry for each set.</summary>
    public const int MostContributions = 16;

    private const sbyte Unknown = -2;
    private const sbyte Impossible = -1;

    private readonly LoadQuestion _question;
    private readonly StepBudget _budget;
    private readonly long[] _sums;
    private readonly long[] _rooms;
    private readonly int[] _ceilings;
    private readonly sbyte[] _most;
    private readonly int _twins;
    private readonly Stack<int> _chosen = new();
    private LoadGroups? _best;
    private long _widest;

    private GroupSearch(LoadQuestion question, StepBudget budget)
    {
        var sets = 1 << question.Weights.Count;
        (_question, _budget) = (question, budget);
        (_sums, _rooms, _ceilings, _most) = (new long[sets], new long[sets], new int[sets], new sbyte[sets]);
        _twins = Enumerable.Range(1, question.Weights.Count - 1).Where(member => question.Weights[member] == question.Weights[member - 1]).Sum(member => 1 << member);
        var (large, heavy) = (new long[sets], new int[sets]);
        for (var set = 1; set < sets; set++)
        {
            var (first, others) = (question.Weights[BitOperations.TrailingZeroCount(set)], set & (set - 1));
            _sums[set] = _sums[others] + first;
            (large[set], heavy[set]) = (large[others] + question.LoadsOf(first) - 1, heavy[others] + (first <= question.Capacity && 2 * first > question.Capacity ? 1 : 0));
            var loads = question.LoadsOf(_sums[set]);
            // What does not fill its own loads is no group and can't be divided into groups: it gets more room than there ever is.
            _rooms[set] = question.IsFilled(_sums[set]) ? question.RoomIn(_sums[set]) : question.Capacity;
            _most[set] = _rooms[set] == question.Capacity ? Impossible : Unknown;
            // Cuts at least: what is over a load, into what fits; and of what is over half a load, all that can't have a load each.
            _ceilings[set] = (int)Math.Min(BitOperations.PopCount((uint)set), loads - large[set] - Math.Max(0, heavy[set] - loads));
        }
    }

    private int All => _sums.Length - 1;

    /// <summary>The best way, or the best found when the steps ran out; null where they ran out before the fewest cuts were proved, or there is no way.</summary>
    /// <param name="question">At most <see cref="MostContributions"/> contributions, from the heaviest to the lightest.</param>
    /// <returns>With it the spread that no way with as few cuts stays under.</returns>
    public static (LoadGroups? Groups, long SpreadAtLeast) Find(LoadQuestion question, StepBudget budget)
    {
        var search = new GroupSearch(question, budget);
        var atLeast = question.Total % question.Loads == 0 ? 0L : 1L;
        if (search.MostGroups(search.All) == Impossible || budget.IsSpent)
            return (null, atLeast);

        var best = search._best = search.First();
        // Narrow windows are soon gone through, and the first that holds a way holds the best.
        for (var window = atLeast; atLeast < best.Spread && !budget.IsSpent; window = 2 * window + 1)
        {
            var widest = search._widest = Math.Min(window, best.Spread - 1);
            search.Choose(search.All, long.MaxValue, 0);
            best = search._best;
            if (!budget.IsSpent)
                atLeast = Math.Min(widest + 1, best.Spread);
        }

        return (best, atLeast);
    }

    private int MostGroups(int left)
    {
        if (_most[left] != Unknown)
            return _most[left];
        var (anchor, room, most) = (left & -left, _rooms[left], Impossible);
        var others = left ^ anchor;
        for (var set = 0; most < _ceilings[left]; set = (set - others) & others)
        {
            if (!_budget.Take())
                return Impossible;
            if (_rooms[anchor | set] <= room && IsFirstOfTwins(anchor | set, left) && MostGroups(others ^ set) is var rest and not Impossible)
                most = (sbyte)Math.Max(most, rest + 1);
            if (set == others)
                break;
        }

        return _most[left] = _budget.IsSpent ? Unknown : most;
    }

    /// <summary>The first way met with the most groups.</summary>
    private LoadGroups First()
    {
        var groups = new List<int>();
        for (var left = All; left != 0; left ^= groups[^1])
        {
            var (anchor, set) = (left & -left, 0);
            while (_rooms[anchor | set] > _rooms[left] || !IsFirstOfTwins(anchor | set, left) || _most[left ^ anchor ^ set] + 1 != _most[left])
                set = (set - (left ^ anchor)) & (left ^ anchor);
            groups.Add(anchor | set);
        }

        return Groups(groups);
    }

    /// <summary>Goes through the ways with the most groups whose loads, with those chosen, lie within the widest spread allowed; each found narrows it.</summary>
    private void Choose(int left, long least, long most)
    {
        if (left == 0)
        {
            _best = Groups(_chosen);
            _widest = _best.Spread - 1;
            return;
        }

        var (anchor, room) = (left & -left, _rooms[left]);
        var others = left ^ anchor;
        for (var set = 0; _budget.Take(); set = (set - others) & others)
        {
            var rest = others ^ set;
            if (_rooms[anchor | set] <= room && IsFirstOfTwins(anchor | set, left) && Widened(least, most, anchor | set) is var range && IsWithin(range)
                && (rest == 0 || IsWithin(Widened(range.Least, range.Most, rest))) && MostGroups(rest) + 1 == _most[left])
            {
                _chosen.Push(anchor | set);
                Choose(rest, range.Least, range.Most);
                _chosen.Pop();
            }

            if (set == others)
                break;
        }
    }

    /// <summary>Contributions of one weight stand side by side; a group takes the first of them that are left, as any others would do the same.</summary>
    private bool IsFirstOfTwins(int group, int left) => (group & _twins & ((left ^ group) << 1)) == 0;

    private bool IsWithin((long Least, long Most) range) => range.Most - range.Least <= _widest;

    /// <summary>The range with the even loads of one more group in it; of what is left too, as some load lies at or under its average and some at or over.</summary>
    private (long Least, long Most) Widened(long least, long most, int group)
    {
        var (sum, loads) = (_sums[group], _question.LoadsOf(_sums[group]));
        return (Math.Min(least, sum / loads), Math.Max(most, (sum + loads - 1) / loads));
    }

    private LoadGroups Groups(IEnumerable<int> sets) =>
        new(_question, [.. sets.Select(set => (IReadOnlyList<int>)[.. Enumerable.Range(0, _question.Weights.Count).Where(member => (set >> member & 1) == 1)])]);
}
