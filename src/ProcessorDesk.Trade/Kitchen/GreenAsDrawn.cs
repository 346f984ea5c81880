namespace ProcessorDesk.Trade.Kitchen;

/// <summary>The green weight that an owner's meat makes in a batch, as it was drawn and not as it was planned.</summary>
public static class GreenAsDrawn
{
    /// <summary>
    /// Green follows lean: twice the lean makes twice the green. Worked on the printed figures, so that meat drawn as planned makes the
    /// green weight planned; to the nearest division, halves away from zero.
    /// </summary>
    /// <param name="lean">Planned; zero for a part too small to have a division of lean, which keeps its plan.</param>
    /// <param name="green">Planned for that lean.</param>
    /// <param name="drawn">Lean as weighed at the mixer; zero or more.</param>
    /// <param name="division">Of the bench scale.</param>
    public static Weight Of(Weight lean, Weight green, Weight drawn, ScaleDivision division)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(drawn, Weight.Zero);
        var planned = division.CountOf(lean);
        return planned == 0
            ? division.Round(green)
            : division.FromCount(Ratio.Of((System.Numerics.BigInteger)division.CountOf(green) * division.CountOf(drawn), planned).Nearest());
    }
}
