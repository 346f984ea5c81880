namespace ProcessorDesk.Records;

/// <summary>Age class of cattle, which says what of the backbone may stay. The numbers are stored.</summary>
public enum CattleAge
{
    Unknown = 0,
    UnderThirtyMonths = 1,
    ThirtyMonthsAndOver = 2,
}
