namespace ProcessorDesk.Trade.Curing;

/// <summary>
/// What several cures hold together. What was weighed is kept in whole milligrams, so that half a milligram on each weight of
/// cure is what keying may have lost, in its favour at a limit as at a minimum.
/// </summary>
internal static class CureSum
{
    public static Ratio HalfMilligram { get; } = Ratio.Of(1, 2);

    /// <summary>Milligrams of an agent, exactly as keyed.</summary>
    public static Ratio Of(IEnumerable<CureAmount> cures, Func<CureAmount, Proportion> agent) =>
        cures.Where(cure => !agent(cure).IsZero).Aggregate(Ratio.Zero, (sum, cure) => sum + cure.Exactly * agent(cure).ToRatio());

    /// <summary>Milligrams of an agent that are certainly there: half a milligram less of each cure.</summary>
    public static Ratio Least(IEnumerable<CureAmount> cures, Func<CureAmount, Proportion> agent) => Kept(cures, agent, -HalfMilligram);

    /// <summary>Milligrams of an agent that may be there: half a milligram more of each cure.</summary>
    public static Ratio Most(IEnumerable<CureAmount> cures, Func<CureAmount, Proportion> agent) => Kept(cures, agent, HalfMilligram);

    private static Ratio Kept(IEnumerable<CureAmount> cures, Func<CureAmount, Proportion> agent, Ratio slack) =>
        cures.Where(cure => cure.Amount.IsPositive && !agent(cure).IsZero).Aggregate(
            Ratio.Zero, (sum, cure) => sum + (Ratio.Of(cure.Amount.Milligrams, 1) + slack) * agent(cure).ToRatio());
}
