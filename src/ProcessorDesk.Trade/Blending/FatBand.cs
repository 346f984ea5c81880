namespace ProcessorDesk.Trade.Blending;

/// <summary>The fat a block may have, from the least to the most of it, both of them allowed.</summary>
/// <param name="Least">Zero where no fat is needed.</param>
/// <param name="Most">At most the whole; not under the least.</param>
public sealed record FatBand(Proportion Least, Proportion Most)
{
    public static FatBand AtMost(Proportion fat) => new(Proportion.Zero, fat);

    public static FatBand AtLeast(Proportion fat) => new(fat, Proportion.Whole);

    public static FatBand Exactly(Proportion fat) => new(fat, fat);

    /// <summary>What is not fat is lean: at least 70 % lean is at most 30 % fat.</summary>
    /// <exception cref="ArgumentOutOfRangeException">More than the whole.</exception>
    public static FatBand LeanAtLeast(Proportion lean) =>
        AtMost(Proportion.FromPartsPerMillion(Proportion.Whole.PartsPerMillion - lean.PartsPerMillion));
}
