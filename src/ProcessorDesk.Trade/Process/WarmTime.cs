namespace ProcessorDesk.Trade.Process;

/// <summary>Time between two readings of a fermenting product, and the degree-hours it took in it.</summary>
public readonly record struct WarmTime(Stretch When, Ratio DegreeHours);
