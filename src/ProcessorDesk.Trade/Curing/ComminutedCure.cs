namespace ProcessorDesk.Trade.Curing;

/// <summary>
/// Cure in ground and chopped product: ingoing nitrite and nitrate on the green weight of the meat block.
/// Source of the method: USDA FSIS Directive 7620.3 (1995); of the limits: 9 CFR 424.21(c).
/// </summary>
/// <remarks>
/// Limits are compared as exact ratios, with half a milligram of slack on each cure's weight for what keeping it in whole
/// milligrams loses: 1 oz of a 6.25 % cure on 25 lb meets.
/// </remarks>
public static class ComminutedCure
{
    private static readonly Ratio HalfMilligram = Ratio.Of(1, 2);

    private static readonly Finding None = new(
        "Cure",
        "There is no cure in this mix. Weigh the cure in.",
        "0 ppm",
        Allowed(CureLimits.ComminutedNitrite),
        CureLimits.ComminutedNitrite.Source);

    /// <summary>Whether the cures weighed in are inside the limits. Zero cure does not meet.</summary>
    /// <param name="meatBlock">Lean and added fat, green; zero or more, zero being found.</param>
    /// <param name="cures">Everything in the mix that holds nitrite or nitrate.</param>
    /// <exception cref="ArgumentOutOfRangeException">A weight is below zero.</exception>
    public static CureCheck Check(Weight meatBlock, IReadOnlyList<CureAmount> cures)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(meatBlock, Weight.Zero);
        foreach (var cure in cures)
            ArgumentOutOfRangeException.ThrowIfLessThan(cure.Amount, Weight.Zero, cure.Name);

        var findings = cures.SelectMany(cure => CureStrength.Check(cure.Nitrite, cure.Nitrate)).ToList();
        if (meatBlock.IsZero)
        {
            findings.Add(new Finding("MeatBlock", "Weigh the meat block first: there is nothing to cure.", "0"));
            return new CureCheck(0m, 0m, false, true, findings, []);
        }

        var block = KeyedFigure.InMilligrams(meatBlock, WeightUnit.Pound);
        var nitrite = Ingoing(cures, cure => cure.Nitrite) / block;
        var nitrate = Ingoing(cures, cure => cure.Nitrate) / block;
        if (nitrite.IsZero && nitrate.IsZero)
            findings.Add(None);
        findings.AddRange(Past(CureLimits.ComminutedNitrite, nitrite, Slack(cures, cure => cure.Nitrite, -HalfMilligram) / block));
        findings.AddRange(Past(CureLimits.ComminutedNitrate, nitrate, Slack(cures, cure => cure.Nitrate, -HalfMilligram) / block));
        var meets = findings.Count == 0;

        var least = CureLimits.KeepRefrigeratedLeast;
        var below = Slack(cures, cure => cure.Nitrite, HalfMilligram) / block < least.Figure;
        if (below && !(nitrite.IsZero && nitrate.IsZero))
            findings.Add(TooLittle(least, nitrite));
        return new CureCheck(
            nitrite.PartsPerMillion,
            nitrate.PartsPerMillion,
            meets,
            below,
            findings,
            CureWorking.Lines(meatBlock, cures, nitrite, nitrate));
    }

    /// <summary>The most of one cure that meets the limits, rounded down to what the small scale shows.</summary>
    /// <exception cref="ArgumentException">Neither nitrite nor nitrate is in it.</exception>
    public static Weight Most(Weight meatBlock, Proportion nitrite, Proportion nitrate, ScaleDivision small)
    {
        if (nitrite.IsZero && nitrate.IsZero)
            throw new ArgumentException("A cure states its nitrite or its nitrate.", nameof(nitrite));
        var parts = new[] { (CureLimits.ComminutedNitrite, nitrite), (CureLimits.ComminutedNitrate, nitrate) }
            .Where(held => !held.Item2.IsZero)
            .Select(held => held.Item1.Figure / held.Item2.ToRatio());
        return Portion.Down(meatBlock, parts.Min(), small);
    }

    /// <summary>The cure that gives a part of nitrite to the meat block, rounded down to what the small scale shows.</summary>
    /// <param name="target">Nitrite to meat block, such as 1/6400; it is not held against the limit here.</param>
    /// <exception cref="ArgumentException">There is no nitrite in the cure, or the target is below zero.</exception>
    public static Weight AmountFor(Weight meatBlock, Ratio target, Proportion nitrite, ScaleDivision small)
    {
        if (nitrite.IsZero || target.Sign < 0)
            throw new ArgumentException("The cure states its nitrite, and the target is zero or more.", nameof(nitrite));
        return Portion.Down(meatBlock, target / nitrite.ToRatio(), small);
    }

    private static Ratio Ingoing(IEnumerable<CureAmount> cures, Func<CureAmount, Proportion> agent) =>
        cures.Aggregate(Ratio.Zero, (sum, cure) => sum + KeyedFigure.InMilligrams(cure.Amount, cure.KeyedIn) * agent(cure).ToRatio());

    private static Ratio Slack(IEnumerable<CureAmount> cures, Func<CureAmount, Proportion> agent, Ratio slack) =>
        cures.Where(cure => cure.Amount.IsPositive).Aggregate(
            Ratio.Zero, (sum, cure) => sum + (Ratio.Of(cure.Amount.Milligrams, 1) + slack) * agent(cure).ToRatio());

    private static IEnumerable<Finding> Past(CureLimit limit, Ratio found, Ratio least)
    {
        if (least <= limit.Figure)
            yield break;
        var ppm = PpmText.PrintPast(found.PartsPerMillion, limit);
        yield return new Finding(
            "Cure",
            $"Too much {Name(limit.Agent)}: {ppm}, and the most is {Allowed(limit)}. Weigh less cure or more meat in.",
            ppm,
            Allowed(limit),
            limit.Source);
    }

    private static Finding TooLittle(CureLimit least, Ratio nitrite)
    {
        var ppm = PpmText.PrintPast(nitrite.PartsPerMillion, least);
        return new Finding(
            "Cure",
            $"Too little nitrite for product that is kept cold: {ppm}, and the least is {PpmText.Print(least)}.",
            ppm,
            "at least " + PpmText.Print(least),
            least.Source);
    }

    private static string Allowed(CureLimit limit) => $"{PpmText.Print(limit)} ({limit.AsPrinted})";

    private static string Name(CureAgent agent) => agent switch
    {
        CureAgent.Nitrite => "nitrite",
        CureAgent.Nitrate => "nitrate",
        CureAgent.Accelerator => "accelerator",
    };
}
