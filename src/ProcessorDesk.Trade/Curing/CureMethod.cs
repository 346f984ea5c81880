namespace ProcessorDesk.Trade.Curing;

/// <summary>How the cure gets into the meat, which says what it is worked on and which limits hold.</summary>
public enum CureMethod
{
    /// <summary>Ground or chopped: on the green weight of the meat block.</summary>
    Comminuted = 1,

    /// <summary>Pumped or massaged: on the pickle, times the pump.</summary>
    Pumped = 2,

    /// <summary>Immersed, method one: as pumped, with the pick-up for the pump.</summary>
    ImmersionPickup = 3,

    /// <summary>Immersed for long, method two: on the green meat and the pickle together.</summary>
    ImmersionEquilibrium = 4,

    /// <summary>Rubbed on dry: on the green weight.</summary>
    Dry = 5,

    /// <summary>Bacon, pumped or massaged.</summary>
    BaconPumped = 6,

    /// <summary>Bacon, immersed: by pick-up where one is stated, otherwise by equilibrium.</summary>
    BaconImmersion = 7,

    /// <summary>Bacon, rubbed on dry: on the skin-free green belly.</summary>
    BaconDry = 8,
}
