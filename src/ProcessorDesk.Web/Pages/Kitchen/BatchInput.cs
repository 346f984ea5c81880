using ProcessorDesk.Records;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>What is typed on a batch's page, each field of a form of its own.</summary>
public sealed class BatchInput
{
    /// <summary>Why a hold is released.</summary>
    public string Because { get; set; } = "";

    public string UndoBecause { get; set; } = "";

    public string WrittenSupport { get; set; } = "";

    public HoldReason Reason { get; set; } = HoldReason.RecordIncomplete;

    public string Note { get; set; } = "";

    public string OffPlanBecause { get; set; } = "";

    public string DiscardBecause { get; set; } = "";
}
