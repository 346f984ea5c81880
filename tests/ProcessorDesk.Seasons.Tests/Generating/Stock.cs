using ProcessorDesk.Trade;

namespace ProcessorDesk.Seasons.Tests.Generating;

/// <summary>A kind of animal as it comes in: common practice, no source; only the order of size matters here.</summary>
/// <param name="Low">Pounds at the door, at the least.</param>
/// <param name="High">Pounds at the door, at the most.</param>
/// <param name="Hanging">Percent of that.</param>
/// <param name="Lean">Percent of the hanging weight that is trim for the grind.</param>
internal sealed record Stock(Species Species, ArrivalState State, int Low, int High, int Hanging, int Lean)
{
    public static Stock Deer { get; } = new(Species.WhiteTailDeer, ArrivalState.FieldDressed, 85, 175, 76, 48);

    public static Stock Elk { get; } = new(Species.Elk, ArrivalState.Quarters, 180, 310, 95, 50);

    public static Stock Lamb { get; } = new(Species.Lamb, ArrivalState.Whole, 95, 140, 50, 30);

    public static Stock Hog { get; } = new(Species.Hog, ArrivalState.Whole, 230, 300, 72, 40);

    public static Stock Beef { get; } = new(Species.Beef, ArrivalState.Whole, 1_050, 1_350, 61, 36);
}
