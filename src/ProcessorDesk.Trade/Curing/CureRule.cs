namespace ProcessorDesk.Trade.Curing;

/// <summary>The published figures one method is held to.</summary>
/// <param name="Nitrite">The most nitrite.</param>
/// <param name="Nitrate">The most nitrate; its figure is zero where none is allowed.</param>
/// <param name="Least">Less nitrite than this is below the minimum: of product kept cold, or what bacon is prescribed to be pumped at.</param>
public sealed record CureRule(CureMethod Method, CureLimit Nitrite, CureLimit Nitrate, CureLimit Least)
{
    /// <summary>The most nitrate; null where none is allowed.</summary>
    public CureLimit? NitrateAllowed => Nitrate.Figure.IsZero ? null : Nitrate;

    /// <summary>What pumped bacon is prescribed; null for every other method, where an accelerator may be left out.</summary>
    public CureLimit? PrescribedAccelerator => Method == CureMethod.BaconPumped ? CureLimits.Find("bacon.pumped.accelerator") : null;

    /// <summary>Where limits and method are published.</summary>
    public string Source => $"{Nitrite.Source}; {CureLimits.Handbook}";

    /// <param name="salt">Which salt the nitrite is; it makes a difference for bacon alone.</param>
    public static CureRule For(CureMethod method, CuringSalt salt) => method switch
    {
        CureMethod.Comminuted => Of(method, CureLimits.ComminutedNitrite, CureLimits.ComminutedNitrate),
        CureMethod.Pumped or CureMethod.ImmersionPickup or CureMethod.ImmersionEquilibrium => Of(method, Find("pickle.nitrite"), Find("pickle.nitrate")),
        CureMethod.Dry => Of(method, Find("dry.nitrite"), Find("dry.nitrate")),
        CureMethod.BaconPumped => Prescribed(Bacon(method, "bacon.pumped", salt)),
        CureMethod.BaconImmersion => Bacon(method, "bacon.immersion", salt),
        CureMethod.BaconDry => Bacon(method, "bacon.dry", salt),
    };

    /// <summary>The most of one kind of accelerator.</summary>
    public static CureLimit AcceleratorLimit(AcceleratorKind kind) => kind switch
    {
        AcceleratorKind.Acid => Find("accelerator.acid"),
        AcceleratorKind.Salt => Find("accelerator.salt"),
    };

    private static CureRule Bacon(CureMethod method, string id, CuringSalt salt) => salt switch
    {
        CuringSalt.Sodium => Of(method, Find(id + ".nitrite.sodium"), Find(id + ".nitrate")),
        CuringSalt.Potassium => Of(method, Find(id + ".nitrite.potassium"), Find(id + ".nitrate")),
    };

    private static CureRule Prescribed(CureRule rule) => rule with { Least = rule.Nitrite };

    private static CureRule Of(CureMethod method, CureLimit nitrite, CureLimit nitrate) => new(method, nitrite, nitrate, CureLimits.KeepRefrigeratedLeast);

    private static CureLimit Find(string id) => CureLimits.Find(id);
}
