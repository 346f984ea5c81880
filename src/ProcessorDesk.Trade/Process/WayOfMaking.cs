namespace ProcessorDesk.Trade.Process;

/// <summary>A way of making a product, and what its record must hold before release. Local rules go before it.</summary>
/// <param name="Id">Lasting name.</param>
/// <param name="Name">As a person reads it.</param>
/// <param name="Source">Who says so.</param>
/// <param name="Mark">How the source was read; "–" for common practice without a source.</param>
public sealed record WayOfMaking(string Id, string Name, ProcessNeeds Needs, string Source, string Mark)
{
    private const string Practice = "common practice, no source";
    private const ProcessNeeds Heated = ProcessNeeds.FinishedWeight | ProcessNeeds.Lethality | ProcessNeeds.Cooling;

    public static WayOfMaking Fresh { get; } = new("fresh", "Fresh", ProcessNeeds.FinishedWeight, Practice, "–");

    public static WayOfMaking CuredRaw { get; } = new("cured-raw", "Cured, raw", ProcessNeeds.FinishedWeight | ProcessNeeds.CureCheck, Practice, "–");

    public static WayOfMaking Smoked { get; } = new("smoked", "Smoked", Heated, Practice, "–");

    public static WayOfMaking Cooked { get; } = new("cooked", "Cooked", Heated, Practice, "–");

    public static WayOfMaking Fermented { get; } = new("fermented", "Fermented", Heated | ProcessNeeds.Fermentation, Practice, "–");

    /// <summary>The cooking table does not hold for what is dried before it is cooked, so nothing but the shop's own process can.</summary>
    public static WayOfMaking Dried { get; } =
        new("dried", "Dried", ProcessNeeds.FinishedWeight | ProcessNeeds.WrittenSupport, LethalityTables.Guideline, "A");

    public static IReadOnlyList<WayOfMaking> All { get; } = [Fresh, CuredRaw, Smoked, Cooked, Fermented, Dried];

    /// <summary>What a batch made so needs. Whatever has cure in it needs the cure check too.</summary>
    public ProcessNeeds NeedsOf(bool cured) => cured ? Needs | ProcessNeeds.CureCheck : Needs;
}
