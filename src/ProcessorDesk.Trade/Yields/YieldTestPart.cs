namespace ProcessorDesk.Trade.Yields;

/// <summary>Something cut off that is not the meat bought for: worth its own price, or nothing.</summary>
/// <param name="Name">"Kidneys", "fat", "loss in cutting".</param>
/// <param name="Weight">Zero or more.</param>
/// <param name="PricePerPound">Dollars a pound; zero for what is thrown away.</param>
public sealed record YieldTestPart(string Name, Weight Weight, decimal PricePerPound);
