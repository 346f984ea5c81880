namespace ProcessorDesk.Web.Pages.Freezer;

/// <summary>What a hand counts and weighs into a box.</summary>
public sealed class PackInput
{
    public List<LineInput> Lines { get; set; } = [];

    public string? Gross { get; set; }

    public string? Tare { get; set; }

    public string? Place { get; set; }

    public bool Sure { get; set; }

    /// <summary>The figure that was asked about: another one is asked about anew.</summary>
    public string? SureOf { get; set; }

    /// <summary>Packs of one kind, as counted.</summary>
    public sealed class LineInput
    {
        public int? AllotmentId { get; set; }

        public string? Cut { get; set; }

        public string? Packs { get; set; }
    }
}
