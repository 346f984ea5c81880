namespace ProcessorDesk.Web.Pages.OwnersPage;

/// <summary>A box of the owner's and where it is.</summary>
/// <param name="TakenAt">When it left; null while it is in the shop's freezer.</param>
public sealed record OwnersBox(int Number, IReadOnlyList<(string Name, int Packs)> Contents, Weight Net, DateTime? TakenAt);
