namespace ProcessorDesk.Paper;

/// <summary>A label and what stands beside it, as printed: "Tag", "TX-0417".</summary>
public sealed record Fact(string Label, string Value);
