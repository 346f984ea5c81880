namespace ProcessorDesk.Trade.Blending;

/// <summary>What may keep a block from being mixed.</summary>
internal enum BlendBoundKind
{
    FatMost,
    FatLeast,
    LeastShare,
    MostShare,
    OnHand,
}
