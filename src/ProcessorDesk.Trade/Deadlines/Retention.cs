namespace ProcessorDesk.Trade.Deadlines;

/// <summary>How long a job's records are kept: by the latest of the rules that apply.</summary>
/// <param name="Until">The last day they are kept; null while a rule that applies can't be counted yet: they are kept in any case.</param>
/// <param name="Rule">The rule that keeps them longest; null as above.</param>
/// <param name="Each">Every rule that applies with its own last day, in the order given.</param>
public sealed record Retention(DateOnly? Until, RetentionRule? Rule, IReadOnlyList<RetentionDay> Each)
{
    /// <param name="apply">The rules that apply, by the shop's own setting; at least one.</param>
    /// <param name="days">The days of the job.</param>
    /// <exception cref="ArgumentException">No rule applies: a shop keeps its records by some rule.</exception>
    public static Retention Of(IReadOnlyList<RetentionRule> apply, JobDays days)
    {
        if (apply.Count == 0)
            throw new ArgumentException("Records are kept by at least one rule.", nameof(apply));
        var each = apply.Select(rule => new RetentionDay(rule, rule.Until(days))).ToList();
        var longest = each.Exists(one => one.Until is null) ? null : each.MaxBy(one => one.Until);
        return new Retention(longest?.Until, longest?.Rule, each);
    }

    /// <summary>Whether the record has to be there on a day, the last one included.</summary>
    public bool IsKeptOn(DateOnly day) => Until is not { } last || day <= last;
}

/// <summary>One rule and the last day it keeps a record; null while it can't be counted.</summary>
public sealed record RetentionDay(RetentionRule Rule, DateOnly? Until);
