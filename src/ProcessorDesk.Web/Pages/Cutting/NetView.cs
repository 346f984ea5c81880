namespace ProcessorDesk.Web.Pages.Cutting;

/// <summary>Lug, tare and net as typed so far; null where not known yet.</summary>
public sealed record NetView(string? Lug, string LugWords, string? Tare, string? Net)
{
    public static NetView Nothing { get; } = new(null, "", null, null);
}
