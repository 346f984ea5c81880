namespace ProcessorDesk.Records;

/// <summary>What was going on when a reading was taken. The numbers are stored.</summary>
public enum ReadingStage
{
    Cooking = 1,
    Chilling = 2,
    Fermenting = 3,
}
