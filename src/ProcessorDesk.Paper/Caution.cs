namespace ProcessorDesk.Paper;

/// <summary>A caution as printed, with its published source where it has one.</summary>
public sealed record Caution(string Heading, string Text, string Source = "");
