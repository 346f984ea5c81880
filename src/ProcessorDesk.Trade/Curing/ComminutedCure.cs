namespace ProcessorDesk.Trade.Curing;

/// <summary>Cure in ground and chopped product, as a load in the mixer asks for it. Every method: <see cref="IngoingCure"/>.</summary>
public static class ComminutedCure
{
    /// <summary>Whether the cures weighed in are inside the limits. Zero cure does not meet.</summary>
    /// <param name="meatBlock">Lean and added fat, green; zero or more, zero being found.</param>
    /// <param name="cures">Everything in the mix that holds nitrite or nitrate.</param>
    /// <exception cref="ArgumentOutOfRangeException">A weight is below zero.</exception>
    public static CureCheck Check(Weight meatBlock, IReadOnlyList<CureAmount> cures) => IngoingCure.Check(CureQuestion.Comminuted(meatBlock, cures));

    /// <summary>The most of one cure that meets the limits, on the small scale's division.</summary>
    /// <exception cref="ArgumentException">Neither nitrite nor nitrate is in it.</exception>
    public static Weight Most(Weight meatBlock, Proportion nitrite, Proportion nitrate, ScaleDivision small) => nitrite.IsZero && nitrate.IsZero
        ? throw new ArgumentException("A cure states its nitrite or its nitrate.", nameof(nitrite))
        : CureDose.Most(CureQuestion.Comminuted(meatBlock, []), nitrite, nitrate, small).Amount;
}
