namespace ProcessorDesk.Records;

/// <summary>How a product is made, which says what its record must hold before release. The numbers are stored.</summary>
public enum ProcessKind
{
    Fresh = 1,
    CuredRaw = 2,
    Smoked = 3,
    Cooked = 4,
    Fermented = 5,
    Dried = 6,
}
