namespace ProcessorDesk.Records;

/// <summary>The nine of United States law, and two that count elsewhere. The numbers are stored, as their sum.</summary>
/// <remarks>Source of the nine: 21 U.S.C. 321(qq), from memory. Mustard and celery are shown by the shop's setting.</remarks>
[Flags]
public enum Allergen
{
    None = 0,
    Milk = 1,
    Egg = 2,
    Fish = 4,
    Shellfish = 8,
    TreeNuts = 16,
    Peanuts = 32,
    Wheat = 64,
    Soybeans = 128,
    Sesame = 256,
    Mustard = 512,
    Celery = 1024,
}
