namespace ProcessorDesk.Paper;

/// <summary>Who prints: the head of every paper an owner takes home.</summary>
/// <param name="Name">The shop's name.</param>
/// <param name="Lines">Address, phone, license number: one line each.</param>
public sealed record ShopHeader(string Name, IReadOnlyList<string> Lines);
