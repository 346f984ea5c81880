namespace ProcessorDesk.Trade.Grinding;

/// <summary>In what terms an owner asks for a product of the grind. The numbers are stored; they never change.</summary>
public enum AskKind
{
    /// <summary>A weight of the owner's own lean.</summary>
    OwnLean = 1,

    /// <summary>A weight of finished product, worked back to lean.</summary>
    Finished = 2,

    /// <summary>A percent of all the measured lean.</summary>
    Percent = 3,

    /// <summary>Whatever the other asks leave, wherever it stands among them.</summary>
    Rest = 4,
}
