using ProcessorDesk.Trade.Process;

namespace ProcessorDesk.Web.Pages.Office;

/// <summary>What process records are held against, as it is typed: the shop's own, and one product's.</summary>
public sealed class ProcessInput
{
    /// <summary>The option's id; empty for the published one that a record comes closest to.</summary>
    public string Cooling { get; set; } = "";

    public string CookingGap { get; set; } = "";

    public string ChillingGap { get; set; } = "";

    public string Accuracy { get; set; } = "";

    public int? ProductId { get; set; }

    public LethalityKind Table { get; set; } = LethalityKind.Meat65Log;

    public string Support { get; set; } = "";

    /// <summary>Percent of the green weight; empty where none is asked for.</summary>
    public string DryingLoss { get; set; } = "";
}
