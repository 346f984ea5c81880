namespace ProcessorDesk.Trade.Kitchen.Planning;

/// <summary>Contributions in groups, each with loads of its own that are as even as the division allows.</summary>
/// <param name="Question">What was divided.</param>
/// <param name="Groups">Places of contributions; each once.</param>
internal sealed record LoadGroups(LoadQuestion Question, IReadOnlyList<IReadOnlyList<int>> Groups)
{
    /// <summary>The emptiest and the fullest load, in divisions.</summary>
    public (long Least, long Most) Loads { get; } = Groups
        .Select(group => group.Sum(member => Question.Weights[member]))
        .Select(sum => (Sum: sum, Loads: Question.LoadsOf(sum)))
        .Aggregate((Least: long.MaxValue, Most: 0L), (range, group) =>
            (Math.Min(range.Least, group.Sum / group.Loads), Math.Max(range.Most, (group.Sum + group.Loads - 1) / group.Loads)));

    public long Cuts => Question.Loads - Groups.Count;

    public long Spread => Loads.Most - Loads.Least;

    public static LoadGroups Whole(LoadQuestion question) => new(question, [[.. Enumerable.Range(0, question.Weights.Count)]]);

    /// <summary>Fewer cuts, or as many and better balanced.</summary>
    public bool IsBetterThan(LoadGroups other) => Cuts != other.Cuts ? Cuts < other.Cuts : Spread < other.Spread;
}
