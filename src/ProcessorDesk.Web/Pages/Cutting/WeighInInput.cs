using ProcessorDesk.Records;

namespace ProcessorDesk.Web.Pages.Cutting;

/// <summary>What a hand types at the scale.</summary>
public sealed class WeighInInput
{
    public string Lug { get; set; } = "";

    public WeighInKind Kind { get; set; } = WeighInKind.LeanTrim;

    public List<int> AnimalIds { get; set; } = [];

    public string Gross { get; set; } = "";

    public string Packs { get; set; } = "";

    /// <summary>Which cut was packed.</summary>
    public string Cut { get; set; } = "";

    /// <summary>Why something was thrown out.</summary>
    public string Why { get; set; } = "";

    /// <summary>Strike the weight that stands in this lug and weigh it anew.</summary>
    public bool Again { get; set; }

    public string AgainBecause { get; set; } = "";

    public bool Sure { get; set; }

    /// <summary>The figure that was asked about: another one is asked about anew.</summary>
    public string SureOf { get; set; } = "";
}
