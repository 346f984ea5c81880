using ProcessorDesk.Records;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Web.Pages.Find;

/// <summary>A box of a job on its hub.</summary>
/// <param name="To">Who took it; null while it is here.</param>
public sealed record HubBox(Box Box, Weight Net, IReadOnlyList<BoxContent> Contents, string? To, DateTime? LeftAt)
{
    /// <summary>"Ring sausage, 20 packs; Steaks, 11 packs".</summary>
    public string What => string.Join("; ", Contents.Select(content => $"{content.Name}, {content.Packs} {(content.Packs == 1 ? "pack" : "packs")}"));
}
