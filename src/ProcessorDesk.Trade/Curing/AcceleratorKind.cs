namespace ProcessorDesk.Trade.Curing;

/// <summary>What speeds the cure up: an acid or the sodium salt of one, which have limits of their own.</summary>
public enum AcceleratorKind
{
    /// <summary>Ascorbic or erythorbic acid.</summary>
    Acid = 1,

    /// <summary>Sodium ascorbate or sodium erythorbate.</summary>
    Salt = 2,
}
