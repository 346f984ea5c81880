namespace ProcessorDesk.Trade.Curing;

/// <summary>Which salt the nitrite of a cure is. It matters for bacon alone; elsewhere one weight limit holds for both.</summary>
public enum CuringSalt
{
    Sodium = 1,
    Potassium = 2,
}
