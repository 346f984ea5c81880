namespace ProcessorDesk.Web.Pages.Counter;

/// <summary>What becomes of one muscle group, as typed. An empty cut is "as the style says".</summary>
public sealed class CutInput
{
    public string Group { get; set; } = "";

    public string Cut { get; set; } = "";

    public string Detail { get; set; } = "";

    public string PerPack { get; set; } = "";
}
