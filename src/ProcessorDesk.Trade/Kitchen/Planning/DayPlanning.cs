namespace ProcessorDesk.Trade.Kitchen.Planning;

/// <summary>Plans the kitchen's day from what waits.</summary>
public static class DayPlanning
{
    /// <summary>Steps for all the pooled batches of a day together.</summary>
    private const long StepsOfDay = 4 * PooledLoads.UsualSteps;

    /// <summary>
    /// A batch is of one product, one species, and with or without pork. Own asks make batches of one owner and never share a load with
    /// another's meat, even under the smallest fill; one larger than the mixer is cut into the fewest loads, as even as the division allows. Those who agreed to pooling
    /// make one batch, divided by <see cref="PooledLoads"/>. Who goes today is decided first, by promise; what is made in which order, by
    /// <see cref="CleaningOrder"/>, and within one cleaning profile by promise. The same meat in another order gives the same plan.
    /// </summary>
    /// <param name="waiting">Any number; held ones are not handed in.</param>
    /// <exception cref="ArgumentException">Two allotments with one number, one without green weight, or a mixer that holds nothing.</exception>
    public static DayPlan Plan(IReadOnlyList<WaitingMeat> waiting, DaySettings settings)
    {
        if (waiting.Select(meat => meat.Id).Distinct().Count() < waiting.Count)
            throw new ArgumentException("Each allotment has a number of its own.", nameof(waiting));
        var (today, later) = DayCapacity.Take(waiting, settings);
        var batches = today.GroupBy(meat => meat.Batch).Select(batch => batch.ToList()).ToList();
        var pooled = batches.Count(batch => batch[0].IsPooled);
        var planned = batches.ConvertAll(batch => Planned(batch, settings, Math.Min(PooledLoads.UsualSteps, StepsOfDay / Math.Max(pooled, 1))));

        var profiles = planned.Select(batch => batch.Profile).Distinct().ToList();
        var order = CleaningOrder.Of(profiles, settings.Minutes);
        var inOrder = order.Order.SelectMany(profile => planned.Where(batch => batch.Profile.Equals(profiles[profile]))).ToList();
        return new DayPlan(
            [.. inOrder.Select((batch, i) => i == 0 ? batch : batch with { CleanedBefore = settings.Minutes.Between(inOrder[i - 1].Profile, batch.Profile) })],
            later, order.Minutes, order.AtLeast);
    }

    private static PlannedBatch Planned(List<WaitingMeat> meat, DaySettings settings, long steps)
    {
        var (first, division) = (meat[0], settings.Division);
        var parts = meat.ConvertAll(one => one.Part);
        var divided = first.IsPooled
            ? PooledLoads.Divide(parts, settings.MixerCapacity, settings.SmallestFill, division, steps)
            : OwnLoads.Divide(parts, settings.MixerCapacity, settings.SmallestFill, division);
        string[] warnings = divided.FillGaveWay
            ? [first.IsPooled
                ? $"{first.Product.Name}, pooled: {Pounds()} is too little for {Loads()} of {division.Print(settings.SmallestFill)}, the smallest good fill. Wait for more, or mix a small load."
                : $"{first.Product.Name}, own: {Pounds()} is under {division.Print(settings.SmallestFill)} a load, the smallest good fill. Owners stay apart all the same: mix by hand or in a small mixer, or ask the owner about pooling."]
            : [];
        return new PlannedBatch(first.Product, first.IsPooled ? null : first.Owner, first.Profile, meat, divided, [], warnings);

        string Pounds() => division.Print(division.Sum(parts.Select(part => part.Green)));
        string Loads() => divided.Loads.Count == 1 ? "a load" : $"{divided.Loads.Count} loads";
    }
}
