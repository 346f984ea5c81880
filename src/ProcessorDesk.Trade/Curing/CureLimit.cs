namespace ProcessorDesk.Trade.Curing;

/// <summary>What a published figure of the curing rules is about.</summary>
public enum CureAgent
{
    Nitrite = 1,
    Nitrate = 2,
    Accelerator = 3,
}

/// <summary>How a published figure binds.</summary>
public enum CureBound
{
    /// <summary>No more than this; zero means none at all.</summary>
    AtMost = 1,

    /// <summary>No less than this.</summary>
    AtLeast = 2,

    /// <summary>Exactly this is to be used.</summary>
    Prescribed = 3,

    /// <summary>To know, not applied.</summary>
    Note = 4,
}

/// <summary>One published figure of the curing rules, held as the ratio the rule means and not as its rounded ppm.</summary>
/// <param name="Id">Stays the same for ever; a shop's own figure names it.</param>
/// <param name="What">The product or method it is for.</param>
/// <param name="Figure">Parts of the agent to parts of the base named in <paramref name="What"/>.</param>
/// <param name="AsPrinted">The figure in the rule's own terms.</param>
/// <param name="Source">Where it is published.</param>
/// <param name="Mark">A: read in the official text; B: read as quoted elsewhere.</param>
public sealed record CureLimit(
    string Id, string What, CureAgent Agent, CureBound Bound, Ratio Figure, string AsPrinted, string Source, char Mark)
{
    /// <summary>The figure in parts per million: 156.25 for 1/4 oz to 100 lb.</summary>
    public decimal PartsPerMillion => Figure.PartsPerMillion;
}
