using ProcessorDesk.Records;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Seasons.Tests.Generating;

/// <summary>A carcass, and what it weighed.</summary>
internal sealed class AnimalInHand(Animal animal, Stock stock, Weight arrival)
{
    public Animal Animal => animal;

    public Stock Stock => stock;

    public Weight Arrival => arrival;

    public Weight Hanging { get; set; }

    /// <summary>Whether the checklist is ticked.</summary>
    public bool IsLookedOver { get; set; }
}
