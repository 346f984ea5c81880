namespace ProcessorDesk.Trade.Formulas;

/// <summary>How dry a sausage is, by its moisture to its protein.</summary>
public enum Dryness
{
    Moist = 1,
    SemiDry = 2,
    Dry = 3,
}
