namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>Meat drawn, as it is typed at the mixer.</summary>
public sealed class DrawInput
{
    /// <summary>Number or ticket.</summary>
    public string Lug { get; set; } = "";

    public string Weighed { get; set; } = "";

    public bool Empties { get; set; }

    public string AlreadyInBecause { get; set; } = "";

    public int? StrikeId { get; set; }

    public string StrikeBecause { get; set; } = "";
}
