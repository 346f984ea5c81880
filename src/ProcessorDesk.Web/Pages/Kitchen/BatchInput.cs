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

    /// <summary>Stages of the smokehouse, a line each.</summary>
    public string Programme { get; set; } = "";

    /// <summary>Pieces stuffed, by load in order; empty where nobody counted.</summary>
    public List<string> Pieces { get; set; } = [];

    public string OffPlanBecause { get; set; } = "";
}
