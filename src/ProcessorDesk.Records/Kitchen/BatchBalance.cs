using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>
/// Where a batch's weight went: drawn, added fat and ingredients are what was mixed; that is finished product, what stays in grinder and
/// stuffer, and the loss. Each line at the bench's division; they add up as printed. The batch must have been loaded with its loads.
/// </summary>
/// <param name="ThawAndDrip">What the emptied lugs lack against their weigh-ins; it never came to the mixer. Below zero where two scales differ.</param>
/// <param name="LeftInMachines">As weighed; null where it was not.</param>
/// <param name="Finished">Null until all that is to be weighed was weighed.</param>
public sealed record BatchBalance(Weight ThawAndDrip, Weight Drawn, Weight Fat, Weight Ingredients, Weight? LeftInMachines, Weight? Finished)
{
    public Weight Mixed => Drawn + Fat + Ingredients;

    /// <summary>What went through smoke, heat and drying, or was packed: the mix less what stayed behind. Loss is counted on this.</summary>
    public Weight WentOn => Mixed - (LeftInMachines ?? Weight.Zero);

    /// <summary>By difference; null without a finished weight. Below zero where more came out than went in.</summary>
    public Weight? Loss => Finished is { } finished ? WentOn - finished : null;

    public static BatchBalance Of(Batch batch, BatchLines lines, ScaleDivision division)
    {
        var mixed = batch.Loads.Where(load => load.MixedAt is not null).ToList();
        var weighed = lines.Finished.Select(one => one.LoadId).ToHashSet();
        var isWeighed = weighed.Count > 0 && (weighed.Contains(null) || mixed.All(load => weighed.Contains(load.Id)));
        return new BatchBalance(
            division.Sum(lines.Of(BatchLineKind.Drip).Select(line => Weight.FromMilligrams(line.Amount))),
            division.Sum(mixed.Select(load => load.Drawn)),
            division.Sum(mixed.Select(load => load.FatWeighed ?? Weight.Zero)),
            division.Round(mixed.SelectMany(load => load.Ingredients).Aggregate(Weight.Zero, (sum, line) => sum + line.Weighed)),
            lines.LeftInMachines is { Count: > 0 } left ? division.Sum(left) : null,
            isWeighed ? division.Sum(lines.Finished.Select(one => one.Net)) : null);
    }
}
