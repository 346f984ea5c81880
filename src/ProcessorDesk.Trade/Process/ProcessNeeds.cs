namespace ProcessorDesk.Trade.Process;

/// <summary>What a batch needs before it may be released.</summary>
[Flags]
public enum ProcessNeeds
{
    None = 0,

    /// <summary>Its finished weight, shared back to the owners.</summary>
    FinishedWeight = 1,

    /// <summary>Each load's cure, checked on what was weighed.</summary>
    CureCheck = 2,

    /// <summary>A cooking record that meets a row of its table.</summary>
    Lethality = 4,

    /// <summary>A chilling record that meets a cooling option.</summary>
    Cooling = 8,

    /// <summary>Degree-hours and acidity within the limit.</summary>
    Fermentation = 16,

    /// <summary>Outside the tables: the shop's own written, validated process, named by the manager.</summary>
    WrittenSupport = 32,
}
