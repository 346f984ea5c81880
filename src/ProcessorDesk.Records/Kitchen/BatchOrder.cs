using ProcessorDesk.Trade.Kitchen.Planning;

namespace ProcessorDesk.Records;

/// <summary>A batch as it is asked for.</summary>
/// <param name="Allotments">What goes in, by id.</param>
/// <param name="Loads">As the day was planned, or arranged by hand; null where the desk divides it.</param>
public sealed record BatchOrder(IReadOnlyList<int> Allotments, IReadOnlyList<HandLoad>? Loads = null)
{
    /// <summary>All that is in the loads.</summary>
    public static BatchOrder Of(IReadOnlyList<HandLoad> loads) => new([.. loads.SelectMany(load => load.Pieces).Select(piece => piece.Allotment).Distinct()], loads);
}
