namespace ProcessorDesk.Trade.Blending;

/// <summary>A meat as it was weighed in, with its fat as measured or from <see cref="FatContents"/>.</summary>
/// <param name="Weight">Zero or more.</param>
/// <param name="Fat">0 to 100 %.</param>
public readonly record struct WeighedMeat(Weight Weight, Proportion Fat)
{
    /// <summary>Fat in all of them together as a part of their weight, exactly: what a block of known contents came to.</summary>
    /// <exception cref="DivideByZeroException">Nothing was weighed.</exception>
    public static Ratio FatIn(IReadOnlyCollection<WeighedMeat> meats) =>
        Ratio.Sum(meats.Select(meat => meat.Fat.ToRatio() * Ratio.Of(meat.Weight.Milligrams, 1))) / Ratio.Of(meats.Sum(meat => meat.Weight.Milligrams), 1);
}
