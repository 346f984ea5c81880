namespace ProcessorDesk.Trade.Curing;

/// <summary>What a cure check has to say about the cure itself.</summary>
internal static class CureFindings
{
    public static Finding MoreThanPickle { get; } =
        new("Pickle", "The cure weighs more than the pickle it is in. Weigh the whole pickle, with the cure in it.");

    public static Finding None(CureRule rule) =>
        new("Cure", "There is no cure in this mix. Weigh the cure in.", "0 ppm", Allowed(rule.Nitrite), rule.Nitrite.Source);

    /// <param name="moreOf">What there is too little of: meat or pickle.</param>
    public static Finding Past(CureLimit limit, Ratio found, string moreOf)
    {
        var (name, ppm) = (Name(limit.Agent), PpmText.PrintPast(found.PartsPerMillion, limit));
        return new Finding(
            "Cure",
            limit.Figure.IsZero
                ? $"No {name} goes into {limit.What}, and this holds {ppm}. Take a cure without {name}."
                : $"Too much {name}: {ppm}, and the most is {Allowed(limit)}. Weigh less cure or more {moreOf} in.",
            ppm,
            Allowed(limit),
            limit.Source);
    }

    public static Finding TooLittle(CureLimit least, Ratio nitrite)
    {
        var ppm = PpmText.PrintPast(nitrite.PartsPerMillion, least);
        var isPrescribed = least.Bound == CureBound.Prescribed;
        return new Finding(
            "Cure",
            isPrescribed
                ? $"Too little nitrite: {least.What} is cured at {PpmText.Print(least)}, and this is {ppm}. Weigh in as near to it as the small scale shows without passing it."
                : $"Too little nitrite for product that is kept cold: {ppm}, and the least is {PpmText.Print(least)}.",
            ppm,
            isPrescribed ? PpmText.Print(least) : "at least " + PpmText.Print(least),
            least.Source);
    }

    /// <summary>"156.25 ppm (1/4 oz per 100 lb)", or "none".</summary>
    public static string Allowed(CureLimit limit) => limit.Figure.IsZero ? limit.AsPrinted : $"{PpmText.Print(limit)} ({limit.AsPrinted})";

    public static string Name(CureAgent agent) => agent switch
    {
        CureAgent.Nitrite => "nitrite",
        CureAgent.Nitrate => "nitrate",
        CureAgent.Accelerator => "accelerator",
    };
}
