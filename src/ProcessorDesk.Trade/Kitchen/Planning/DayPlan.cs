namespace ProcessorDesk.Trade.Kitchen.Planning;

/// <summary>The kitchen's day.</summary>
/// <param name="Batches">In the order they are made.</param>
/// <param name="Waiting">What does not fit today, in turn.</param>
/// <param name="CleaningMinutes">Between the batches together.</param>
/// <param name="CleaningAtLeast">No order of these batches takes less.</param>
public sealed record DayPlan(IReadOnlyList<PlannedBatch> Batches, IReadOnlyList<LeftWaiting> Waiting, int CleaningMinutes, int CleaningAtLeast)
{
    /// <summary>The loads of every batch and the order of the day are shown to be the best there are.</summary>
    public bool IsProved => CleaningMinutes == CleaningAtLeast && Batches.All(batch => batch.Division.IsProved);

    /// <summary>How good the plan is, in a sentence; where it is not proved, what could still be better.</summary>
    public string Standing => IsProved
        ? "No plan of this meat has fewer loads, fewer cuts, better balance or less cleaning."
        : string.Join(" ", Batches.Where(batch => !batch.Division.IsProved).Select(Open)
            .Append(CleaningMinutes > CleaningAtLeast ? $"The best order found has {CleaningMinutes} min of cleaning; none has less than {CleaningAtLeast} min." : "").Where(text => text.Length > 0));

    private static string Open(PlannedBatch batch) => batch.Division switch
    {
        { Cuts: var cuts, CutsAtLeast: var least } when cuts > least => $"{batch.Product.Name}: the best found has {cuts} cuts; none has fewer than {least}.",
        { Spread: var spread, SpreadAtLeast: var least } => $"{batch.Product.Name}: the fewest cuts; the best found has {spread} divisions between the fullest and the emptiest load, none has fewer than {least}.",
    };
}
