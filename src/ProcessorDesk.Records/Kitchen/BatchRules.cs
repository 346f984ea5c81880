using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Process;

namespace ProcessorDesk.Records;

/// <summary>
/// What the shop and the product had set when the mixing of a batch was finished. Its record is held against these and no others: a
/// setting changed later neither helps nor harms it. Never changed.
/// </summary>
public sealed class BatchRules
{
    private BatchRules()
    {
    }

    public int BatchId { get; private set; }

    /// <summary>The table the cooking is held against.</summary>
    public LethalityKind Cooking { get; private set; } = LethalityKind.Meat65Log;

    /// <summary>The manager's support for a table that needs it; null where it needs none.</summary>
    public string? CookingSupport { get; private set; }

    /// <summary>The id of the cooling option; null for the published one that the record comes closest to.</summary>
    public string? CoolingOption { get; private set; }

    /// <summary>Between two cooking readings, at the most; what is longer counts for nothing.</summary>
    public int CookingGapMinutes { get; private set; } = Minutes(LongestGap.Cooking);

    /// <summary>The same between two chilling readings.</summary>
    public int ChillingGapMinutes { get; private set; } = Minutes(LongestGap.Cooling);

    /// <summary>How far the thermometer may be off; added above the cooking table. Zero or more.</summary>
    public Temperature Accuracy { get; private set; }

    /// <summary>The part of the green weight that has to be gone; null where none was set.</summary>
    public Proportion? DryingLoss { get; private set; }

    public TimeSpan CookingGap => TimeSpan.FromMinutes(CookingGapMinutes);

    public TimeSpan ChillingGap => TimeSpan.FromMinutes(ChillingGapMinutes);

    /// <summary>The published ones, for batches from before the shop could set its own.</summary>
    public static BatchRules Published { get; } = new();

    public static BatchRules Of(ShopSettings shop, Product product) => new()
    {
        Cooking = product.Cooking,
        CookingSupport = product.CookingSupport,
        CoolingOption = shop.CoolingOption,
        CookingGapMinutes = shop.CookingGapMinutes,
        ChillingGapMinutes = shop.ChillingGapMinutes,
        Accuracy = shop.ThermometerAccuracy,
        DryingLoss = product.DryingLoss,
    };

    internal static int Minutes(TimeSpan gap) => (int)(gap.Ticks / TimeSpan.TicksPerMinute);
}
