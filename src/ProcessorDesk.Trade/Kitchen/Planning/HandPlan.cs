namespace ProcessorDesk.Trade.Kitchen.Planning;

/// <summary>Judges loads arranged by hand.</summary>
public static class HandPlan
{
    /// <summary>
    /// What breaks a promise is refused: meat of another owner with an own ask, more than the mixer holds, pieces that do not add up
    /// to their allotment, meat that does not wait, two products, species, or pork with pork-free in one load. All else is allowed and
    /// costed against the plan of the same allotments. An allotment that is in no load waits.
    /// </summary>
    /// <param name="waiting">As for <see cref="DayPlanning.Plan"/>.</param>
    /// <param name="loads">Two pieces of one allotment in one load count as one.</param>
    public static HandJudgement Judge(IReadOnlyList<WaitingMeat> waiting, DaySettings settings, IReadOnlyList<HandLoad> loads)
    {
        var meat = waiting.ToDictionary(one => one.Id);
        List<Finding> refusals = [.. loads.SelectMany((load, i) => OfLoad(load, i, meat, settings)), .. NotAddedUp(loads, meat, settings.Division)];
        return new HandJudgement(refusals, refusals.Count > 0 ? [] : HandCosts.Of(loads, meat, settings));
    }

    private static IEnumerable<Finding> OfLoad(HandLoad load, int place, Dictionary<int, WaitingMeat> meat, DaySettings settings)
    {
        var (field, name, division) = ($"Loads[{place}]", $"Load {load.Number}", settings.Division);
        if (load.Pieces.Count == 0 || load.Pieces.Any(piece => division.CountOf(piece.Green) <= 0))
            yield return new Finding(field, $"{name} has a piece of nothing. Take it out.");
        if (load.Pieces.Any(piece => !meat.ContainsKey(piece.Allotment)))
            yield return new Finding(field, $"{name}: something in it does not wait. It is on hold, planned already, or gone. Look at the list again.");
        var count = load.Pieces.Sum(piece => division.CountOf(piece.Green));
        if (count > division.CountDown(settings.MixerCapacity))
            yield return new Finding(field, $"{name} is more than the mixer holds. Take some out.", division.Print(division.FromCount(count)), division.Print(settings.MixerCapacity));

        var within = load.Pieces.Where(piece => meat.ContainsKey(piece.Allotment)).Select(piece => meat[piece.Allotment]).DistinctBy(one => one.Id).ToList();
        if (within.Find(one => !one.IsPooled) is { } own && within.Any(one => one.Owner != own.Owner))
            yield return new Finding(field, $"{name}: the meat of {own.Whose} is not to be pooled. Keep other owners' meat out of the load.");
        if (within.DistinctBy(one => one.Product.Key).Count() > 1)
            yield return new Finding(field, $"{name} is of {string.Join(" and ", within.Select(one => one.Product.Name).Distinct())}. A load is of one product and one version of its formula.");
        if (within.DistinctBy(one => one.Species).Count() > 1)
            yield return new Finding(field, $"{name} is of more than one species. Make a load of each.");
        if (within.DistinctBy(one => one.HoldsPork).Count() > 1)
            yield return new Finding(field, $"{name} has pork in it, and that of {within.Find(one => !one.HoldsPork)?.Whose} is to be pork-free. Keep them apart.");
    }

    private static IEnumerable<Finding> NotAddedUp(IReadOnlyList<HandLoad> loads, Dictionary<int, WaitingMeat> meat, ScaleDivision division) =>
        from piece in loads.SelectMany(load => load.Pieces)
        where meat.ContainsKey(piece.Allotment)
        group division.CountOf(piece.Green) by piece.Allotment into pieces
        let of = meat[pieces.Key]
        where pieces.Sum() != division.CountOf(of.Part.Green)
        select new Finding(
            $"Allotments[{pieces.Key}]", $"The pieces of {of.Whose} do not add up to what was agreed. Put all of it in, or none.",
            division.Print(division.FromCount(pieces.Sum())), division.Print(of.Part.Green));
}
