namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>A finished weight as it is typed.</summary>
public sealed class WeighFinishedInput
{
    /// <summary>The load's id; empty for all loads together.</summary>
    public string Load { get; set; } = "";

    public string Gross { get; set; } = "";

    /// <summary>Empty where nothing lies under it.</summary>
    public string Tare { get; set; } = "";

    /// <summary>Pieces counted; empty where nobody counts.</summary>
    public string Pieces { get; set; } = "";

    /// <summary>What stayed in grinder and stuffer; empty where it is not weighed.</summary>
    public string Left { get; set; } = "";

    public bool Sure { get; set; }

    /// <summary>The net that was asked about: another one is asked about anew.</summary>
    public string SureOf { get; set; } = "";

    public int? StrikeId { get; set; }

    public string StrikeBecause { get; set; } = "";
}
