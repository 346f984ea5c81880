namespace ProcessorDesk.Trade.Blending;

/// <summary>A bound of a linear program: the sum of coefficient × variable is at most, or exactly, the limit.</summary>
internal sealed record SimplexRow(IReadOnlyList<Ratio> Coefficients, Ratio Limit, bool Exactly);
