namespace ProcessorDesk.Paper;

/// <summary>A hold as printed.</summary>
/// <param name="Reason">What it waits for: "Disease test pending".</param>
/// <param name="Words">What may not be done meanwhile: "Do not cut, grind or hand over."</param>
public sealed record HoldNotice(string Reason, string Words);
