namespace ProcessorDesk.Trade.Process;

/// <summary>One entry of a probe.</summary>
/// <param name="At">In ticks.</param>
/// <param name="Hundredths">Of a degree Fahrenheit.</param>
internal readonly record struct TrackEntry(long At, int Hundredths);
