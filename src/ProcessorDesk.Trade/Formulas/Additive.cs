namespace ProcessorDesk.Trade.Formulas;

/// <summary>What an addition is to the rules for sausage, beside its salt, fat and water.</summary>
public enum Additive
{
    /// <summary>Nothing they speak of.</summary>
    None = 0,

    /// <summary>Dry milk, cereal, starch, soy flour and their like.</summary>
    Binder = 1,

    /// <summary>A binder with a limit of its own.</summary>
    IsolatedSoyProtein = 2,

    /// <summary>A binder with a limit of its own.</summary>
    SodiumCaseinate = 3,

    /// <summary>Phosphates.</summary>
    Phosphate = 4,
}
