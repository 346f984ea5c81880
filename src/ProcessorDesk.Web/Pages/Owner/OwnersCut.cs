namespace ProcessorDesk.Web.Pages.OwnersPage;

/// <summary>What becomes of one muscle group, as it was ordered.</summary>
public sealed record OwnersCut(string Group, string Cut, string? Detail, int? PerPack)
{
    /// <summary>"Steaks, 3/4 in, 4 to a pack".</summary>
    public string Words => string.Join(", ", new[] { CutMenu.CutName(Cut), Detail, PerPack is { } pieces ? $"{pieces} to a pack" : null }.OfType<string>());
}
