namespace ProcessorDesk.Trade.Curing;

/// <summary>What has to be known before a cure can be worked: the method, what it is worked on, and everything weighed in that holds cure.</summary>
/// <param name="Cures">Empty where only the most of a cure is asked for.</param>
public sealed record CureQuestion(CureMethod Method, IReadOnlyList<CureAmount> Cures)
{
    private static readonly Proportion LeastPump = Proportion.FromPercent(1m);

    /// <summary>Green weight of the meat; not used where it is pumped or picks up, so that it may be left out there.</summary>
    public KeyedWeight? Meat { get; init; }

    /// <summary>The whole pickle as weighed, the cure in it included; null where there is none.</summary>
    public KeyedWeight? Pickle { get; init; }

    /// <summary>Pickle pumped or picked up as a part of the green weight; above 0, at most 100 %.</summary>
    public Proportion? Pump { get; init; }

    /// <summary>Which salt the nitrite is; for bacon alone.</summary>
    public CuringSalt Salt { get; init; } = CuringSalt.Sodium;

    /// <summary>Null for none.</summary>
    public CureAccelerator? Accelerator { get; init; }

    /// <summary>Ground product: the method of a load in the mixer.</summary>
    public static CureQuestion Comminuted(Weight meatBlock, IReadOnlyList<CureAmount> cures) =>
        new(CureMethod.Comminuted, cures) { Meat = KeyedWeight.Of(meatBlock) };

    /// <summary>What is missing or impossible, so that nothing can be worked yet; empty where all is there.</summary>
    /// <returns>Findings on the fields "MeatBlock", "Pickle" and "Pump".</returns>
    public IReadOnlyList<Finding> Problems() => Method switch
    {
        CureMethod.Comminuted or CureMethod.Dry or CureMethod.BaconDry => [.. MeatProblems()],
        CureMethod.Pumped or CureMethod.ImmersionPickup or CureMethod.BaconPumped => [.. PickleProblems(), .. PumpProblems()],
        CureMethod.ImmersionEquilibrium => [.. MeatProblems(), .. PickleProblems()],
        CureMethod.BaconImmersion => Pump is null ? [.. MeatProblems(), .. PickleProblems()] : [.. PickleProblems(), .. PumpProblems()],
    };

    /// <summary>The pickle where the method has one.</summary>
    internal KeyedWeight? PickleOfMethod => Method switch
    {
        CureMethod.Comminuted or CureMethod.Dry or CureMethod.BaconDry => null,
        CureMethod.Pumped or CureMethod.ImmersionPickup or CureMethod.ImmersionEquilibrium or CureMethod.BaconPumped or CureMethod.BaconImmersion => Pickle,
    };

    private IEnumerable<Finding> MeatProblems()
    {
        if (Meat is null || Meat.Milligrams.IsZero)
            yield return new Finding("MeatBlock", "Weigh the meat block first: there is nothing to cure.", "0");
    }

    private IEnumerable<Finding> PickleProblems()
    {
        if (Pickle is null || Pickle.Milligrams.IsZero)
            yield return new Finding("Pickle", "Weigh the whole pickle, with the cure in it.", Pickle is null ? "" : "0");
    }

    // A tenth typed for ten percent would let in a hundred times the cure; nobody pumps less than one percent.
    private IEnumerable<Finding> PumpProblems()
    {
        var name = Method is CureMethod.Pumped or CureMethod.BaconPumped ? "pump" : "pick-up";
        if (Pump is not { } pump)
            yield return new Finding("Pump", $"State the {name} in percent of the green weight, for example 10.");
        else if (pump < LeastPump || pump > Proportion.Whole)
            yield return new Finding("Pump", $"A {name} is 1 to 100 % of the green weight. Was a fraction typed? Write 10 for 10 %.", pump.Print(), "1 to 100 %");
    }
}
