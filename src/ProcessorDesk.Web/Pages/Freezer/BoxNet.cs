namespace ProcessorDesk.Web.Pages.Freezer;

/// <summary>Packs and net as typed so far; the net is null where it is not known yet.</summary>
public sealed record BoxNet(string Packs, string? Net)
{
    public static BoxNet Nothing { get; } = new("No packs yet", null);
}
