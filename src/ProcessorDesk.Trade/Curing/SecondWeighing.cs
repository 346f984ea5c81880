namespace ProcessorDesk.Trade.Curing;

/// <summary>A cure is weighed twice before it goes in, by two hands or by one that set the scale to zero in between.</summary>
public static class SecondWeighing
{
    private static readonly Weight s_draught = Weight.FromGrams(0.5m);

    /// <summary>
    /// As far apart as two weighings of one dose may be: a division of the small scale, and half a gram for draught and crumbs.
    /// Common practice, no source.
    /// </summary>
    public static Weight MostApart(ScaleDivision small) => small.FromCount(1) + s_draught;

    public static bool Agree(Weight first, Weight again, ScaleDivision small) => Apart(first, again) <= MostApart(small);

    public static Weight Apart(Weight first, Weight again) => Weight.Max(first, again) - Weight.Min(first, again);
}
