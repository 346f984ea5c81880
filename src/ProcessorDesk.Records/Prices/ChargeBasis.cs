namespace ProcessorDesk.Records;

/// <summary>What a price is counted by. The numbers are stored.</summary>
public enum ChargeBasis
{
    Each = 1,
    HangingPound = 2,
    LeanPound = 3,
    GreenPound = 4,
    FinishedPound = 5,
    AddedFatPound = 6,
}
