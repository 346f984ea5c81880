namespace ProcessorDesk.Trade.Curing;

/// <summary>
/// Ingoing nitrite and nitrate by every method, held against the limits. Source of the ways of working: USDA FSIS Directive
/// 7620.3 (1995); of the limits: 9 CFR 424.21(c), for bacon 424.22(b).
/// </summary>
/// <remarks>
/// Limits are compared as exact ratios, with half a milligram of slack on each cure's weight for what keeping it in whole
/// milligrams loses: 1 oz of a 6.25 % cure on 25 lb meets.
/// </remarks>
public static class IngoingCure
{
    /// <summary>
    /// Whether what is weighed in meets: there is a cure, nothing is past its limit, and pumped bacon has the accelerator it is
    /// prescribed. A question with problems does not meet, and they are its findings.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">A weight or an accelerator is below zero.</exception>
    public static CureCheck Check(CureQuestion question)
    {
        foreach (var cure in question.Cures)
            ArgumentOutOfRangeException.ThrowIfLessThan(cure.Amount, Weight.Zero, cure.Name);

        var rule = CureRule.For(question.Method, question.Salt);
        var problems = question.Problems();
        var findings = question.Cures.SelectMany(cure => CureStrength.Check(cure.Nitrite, cure.Nitrate)).Concat(problems).ToList();
        if (problems.Count > 0)
            return new CureCheck(rule, 0m, 0m, false, true, findings, [], []);

        var on = CureBase.Of(question);
        var nitrite = CureSum.Of(question.Cures, cure => cure.Nitrite) * on.Share;
        var nitrate = CureSum.Of(question.Cures, cure => cure.Nitrate) * on.Share;
        var isNone = nitrite.IsZero && nitrate.IsZero;
        if (isNone)
            findings.Add(CureFindings.None(rule));
        if (question.PickleOfMethod is { } pickle && CureSum.Least(question.Cures, _ => Proportion.Whole) > pickle.Milligrams)
            findings.Add(CureFindings.MoreThanPickle);
        if (CureSum.Least(question.Cures, cure => cure.Nitrite) * on.Share > rule.Nitrite.Figure)
            findings.Add(CureFindings.Past(rule.Nitrite, nitrite, on.MoreOf));
        if (CureSum.Least(question.Cures, cure => cure.Nitrate) * on.Share > rule.Nitrate.Figure)
            findings.Add(CureFindings.Past(rule.Nitrate, nitrate, on.MoreOf));
        findings.AddRange(AcceleratorFindings.Of(rule, question.Accelerator, isNone));
        var meets = findings.Count == 0;

        var below = CureSum.Most(question.Cures, cure => cure.Nitrite) * on.Share < rule.Least.Figure;
        if (below && !isNone)
            findings.Add(CureFindings.TooLittle(rule.Least, nitrite));
        return new CureCheck(
            rule,
            nitrite.PartsPerMillion,
            nitrate.PartsPerMillion,
            meets,
            below,
            findings,
            CureNotes.Of(question.Cures, nitrite),
            CureWorking.Lines(question.Cures, on, rule, nitrite, nitrate));
    }
}
