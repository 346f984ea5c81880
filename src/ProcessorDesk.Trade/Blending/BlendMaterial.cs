namespace ProcessorDesk.Trade.Blending;

/// <summary>A meat or fat that may go into a block, and what binds it.</summary>
/// <param name="Name">As the shop calls it.</param>
/// <param name="Fat">Its fat, measured or from <see cref="FatContents"/>; 0 to 100 %.</param>
/// <param name="Price">What a pound of it costs.</param>
/// <param name="LeastShare">The least of it as a part of the block; zero for none.</param>
/// <param name="MostShare">The most of it as a part of the block; the whole for none.</param>
/// <param name="OnHand">The most of it there is; null where there is enough.</param>
public sealed record BlendMaterial(
    string Name, Proportion Fat, PricePerPound Price, Proportion LeastShare, Proportion MostShare, Weight? OnHand)
{
    /// <summary>A material with no bound but its fat.</summary>
    public static BlendMaterial Free(string name, Proportion fat, PricePerPound price) =>
        new(name, fat, price, Proportion.Zero, Proportion.Whole, null);
}
