namespace ProcessorDesk.Trade.Yields;

/// <summary>What the guidance says of one carcass on one day.</summary>
/// <param name="Days">Days hung.</param>
/// <param name="Standing">Where that stands.</param>
/// <param name="Text">The same in words.</param>
/// <param name="DaysLeft">Days until the guidance ends, negative when past it; null where nothing is published. Sorts what to cut next.</param>
public sealed record HangingWord(int Days, HangingStanding Standing, string Text, int? DaysLeft);

/// <summary>Where a carcass stands in its hanging time.</summary>
public enum HangingStanding
{
    NotYet = 1,
    InTime = 2,
    CutNow = 3,
    TooLong = 4,
    NoGuidance = 5,
}
