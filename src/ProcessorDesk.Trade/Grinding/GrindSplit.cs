namespace ProcessorDesk.Trade.Grinding;

/// <summary>The lean split over what was asked.</summary>
/// <param name="Lean">The measured lean; the allotments' leans sum to it in milligrams and as printed.</param>
/// <param name="Allotments">
/// One for each ask in the order asked, those dropped with zero throughout; then the plain ground where it takes something
/// or no ask was for the rest.
/// </param>
public sealed record GrindSplit(Weight Lean, IReadOnlyList<Allotment> Allotments)
{
    /// <summary>Whether every ask got what it asked for.</summary>
    public bool IsAsAsked => Allotments.All(allotment => allotment.Reasons.Count == 0);
}
