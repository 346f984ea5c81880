namespace ProcessorDesk.Trade;

/// <summary>Whole numbers of an exact figure.</summary>
internal static class RatioRounding
{
    /// <summary>Nearest whole number, halves away from zero.</summary>
    public static long Nearest(this Ratio ratio) => (long)Rounding.Divide(ratio.Numerator, ratio.Denominator);

    /// <summary>Largest whole number not above.</summary>
    public static long Down(this Ratio ratio) => (long)Rounding.Floor(ratio.Numerator, ratio.Denominator);
}
