namespace ProcessorDesk.Trade.Grinding;

/// <summary>How a product of the grind is made up, as far as the split of the lean needs to know.</summary>
/// <param name="LeanShare">The owner's lean as a part of the meat block (lean and added fat); above zero, at most the whole.</param>
/// <param name="Additions">Everything that is not meat (cure, salt, spice, water) as a part of the meat block; zero or more.</param>
/// <param name="Loss">What cooking and drying usually take of the green weight; under the whole.</param>
/// <param name="LossLow">The least they take: the high end of the finished weight.</param>
/// <param name="LossHigh">The most they take: the low end of the finished weight; under the whole.</param>
/// <param name="SmallestRun">Green weight under which the product is not made; zero for none.</param>
/// <param name="Step">Green weight the product is made in multiples of; zero for none.</param>
public sealed record GrindBlend(
    Proportion LeanShare,
    Ratio Additions,
    Proportion Loss,
    Proportion LossLow,
    Proportion LossHigh,
    Weight SmallestRun,
    Weight Step)
{
    /// <summary>Plain ground of the owner's own lean: nothing added, nothing lost.</summary>
    public static GrindBlend Plain { get; } = new(
        Proportion.Whole, Ratio.Zero, Proportion.Zero, Proportion.Zero, Proportion.Zero, Weight.Zero, Weight.Zero);

    /// <summary>Green weight for each part of lean.</summary>
    internal Ratio GreenPerLean => (Ratio.One + Additions) / LeanShare.ToRatio();
}
