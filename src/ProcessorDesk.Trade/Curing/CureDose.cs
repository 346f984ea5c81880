namespace ProcessorDesk.Trade.Curing;

/// <summary>How much of a cure: the other direction of <see cref="IngoingCure"/>.</summary>
public static class CureDose
{
    /// <summary>
    /// The most of one cure, beside what else holds cure in the question, as the small scale can weigh it: that much meets the
    /// limits of nitrite and nitrate, and one division more does not. Where a pickle is weighed it is the whole pickle, this cure included.
    /// </summary>
    /// <param name="beside">The method and its weights; its cures are those already in beside this one, usually none.</param>
    /// <param name="nitrite">As the maker states.</param>
    /// <param name="nitrate">As the maker states; zero where there is none.</param>
    /// <returns>Zero, with the reason, where none may go in or the question has problems.</returns>
    public static MostCure Most(CureQuestion beside, Proportion nitrite, Proportion nitrate, ScaleDivision small)
    {
        if (beside.Problems().Concat(CureStrength.Check(nitrite, nitrate)).FirstOrDefault() is { } problem)
            return MostCure.None(problem.Text);
        if (nitrite.IsZero && nitrate.IsZero)
            return MostCure.None("There is neither nitrite nor nitrate in it.");

        var (rule, on) = (CureRule.For(beside.Method, beside.Salt), CureBase.Of(beside));
        List<MostCure> bounds = [];
        foreach (var (limit, strength, agent) in Agents(rule, nitrite, nitrate))
        {
            var already = CureSum.Least(beside.Cures, agent);
            var left = limit.Figure / on.Share - already;
            if (left.Sign < 0)
                return MostCure.None($"What is in already is past the limit of {CureFindings.Name(limit.Agent)}: {CureFindings.Allowed(limit)}.", limit);
            if (limit.Figure.IsZero && !strength.IsZero)
                return MostCure.None($"No nitrate goes into {limit.What}, and this cure holds some: none of it may go in.", limit);
            if (strength.IsZero)
                continue;
            var amount = MeetingDown(left / strength.ToRatio(), small);
            bounds.Add(new MostCure(
                amount,
                limit,
                $"The limit of {CureFindings.Name(limit.Agent)} decides: {CureFindings.Allowed(limit)}.",
                [.. CureNotes.Doubts(nitrite, nitrate)],
                CureWorking.Most(on, limit, left, already, strength, amount, small)));
        }

        if (beside.PickleOfMethod is { } pickle)
        {
            var room = pickle.Milligrams - CureSum.Least(beside.Cures, _ => Proportion.Whole);
            bounds.Add(new MostCure(MeetingDown(room, small), null, "The pickle decides: no more cure than pickle can be in it.", [.. CureNotes.Doubts(nitrite, nitrate)], []));
        }

        return bounds.MinBy(bound => bound.Amount)!;
    }

    /// <summary>The cure that gives a part of nitrite, rounded down to what the small scale shows.</summary>
    /// <param name="question">The method and its weights, without problems; its cures do not count.</param>
    /// <param name="target">Nitrite on the method's base, such as 1/6400; it is not held against the limit here.</param>
    /// <exception cref="ArgumentException">There is no nitrite in the cure, the target is below zero, or the question has problems.</exception>
    public static Weight AmountFor(CureQuestion question, Ratio target, Proportion nitrite, ScaleDivision small)
    {
        if (nitrite.IsZero || target.Sign < 0)
            throw new ArgumentException("The cure states its nitrite, and the target is zero or more.", nameof(nitrite));
        if (question.Problems() is [var problem, ..])
            throw new ArgumentException(problem.Text, nameof(question));
        var milligrams = target / CureBase.Of(question).Share / nitrite.ToRatio();
        return small.FromCount((milligrams / KeyedFigure.MilligramsPerStep(small)).Down());
    }

    private static (CureLimit Limit, Proportion Strength, Func<CureAmount, Proportion> Agent)[] Agents(CureRule rule, Proportion nitrite, Proportion nitrate) =>
        [(rule.Nitrite, nitrite, cure => cure.Nitrite), (rule.Nitrate, nitrate, cure => cure.Nitrate)];

    // A check gives half a milligram on each weight. The largest count whose weight, to the nearest milligram, is within that.
    private static Weight MeetingDown(Ratio milligrams, ScaleDivision small)
    {
        var whole = (milligrams + CureSum.HalfMilligram).Down();
        if (whole <= 0)
            return Weight.Zero;
        var count = ((Ratio.Of(whole, 1) + CureSum.HalfMilligram) / KeyedFigure.MilligramsPerStep(small)).Down();
        return small.FromCount(count).Milligrams <= whole ? small.FromCount(count) : small.FromCount(count - 1);
    }
}
