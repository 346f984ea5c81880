namespace ProcessorDesk.Paper;

/// <summary>The stock a box label is printed on.</summary>
public enum LabelStock
{
    /// <summary>4 × 6 in, upright: the stock of the tickets.</summary>
    FourBySix = 1,

    /// <summary>4 × 2 in, lying.</summary>
    FourByTwo = 2,
}
