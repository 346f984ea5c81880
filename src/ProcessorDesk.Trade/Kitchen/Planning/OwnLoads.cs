namespace ProcessorDesk.Trade.Kitchen.Planning;

/// <summary>Divides the meat of one owner over fillings of the mixer.</summary>
public static class OwnLoads
{
    /// <summary>
    /// The fewest loads, as even as the division allows. The smallest good fill gives way to keeping owners apart, and cuts between the
    /// asks of one owner are free, so that nothing is left to search for: it is as good as it gets.
    /// </summary>
    /// <inheritdoc cref="MixerLoads.Plan"/>
    public static LoadDivision Divide(IReadOnlyList<BatchPart> parts, Weight capacity, Weight smallestFill, ScaleDivision division)
    {
        var loads = MixerLoads.Plan(parts, capacity, division);
        var (pieces, greens) = (loads.Sum(load => load.Pieces.Count), loads.Select(load => load.Pieces.Sum(piece => division.CountOf(piece.Green))).ToList());
        var (cuts, spread) = (pieces - parts.Count, greens.Max() - greens.Min());
        return new LoadDivision(loads, cuts, cuts, spread, spread, greens.Min() < Math.Min(division.CountOf(smallestFill), division.CountDown(capacity)));
    }
}
