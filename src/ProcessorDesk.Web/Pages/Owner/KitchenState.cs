namespace ProcessorDesk.Web.Pages.OwnersPage;

/// <summary>How far a product is, as its owner is told.</summary>
public enum KitchenState
{
    /// <summary>The trim is not divided yet.</summary>
    Asked,
    Waiting,
    Planned,
    Mixed,
    Made,
    ThrownOut,
}
