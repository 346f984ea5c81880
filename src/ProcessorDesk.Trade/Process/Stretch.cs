namespace ProcessorDesk.Trade.Process;

/// <summary>Time from one moment to another, both in; it may be a single moment. In ticks as a <see cref="DateTime"/> counts them, exactly.</summary>
public readonly record struct Stretch(Ratio From, Ratio To);
