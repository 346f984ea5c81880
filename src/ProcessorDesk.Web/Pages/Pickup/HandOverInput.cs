namespace ProcessorDesk.Web.Pages.Pickup;

/// <summary>What is ticked to go out, and to whom.</summary>
public sealed class HandOverInput
{
    /// <summary>A ticket just scanned or typed, on its way to be ticked off.</summary>
    public string? Scan { get; set; }

    public List<int> Boxes { get; set; } = [];

    public List<int> Parts { get; set; } = [];

    public string? To { get; set; }

    public bool Owing { get; set; }
}
