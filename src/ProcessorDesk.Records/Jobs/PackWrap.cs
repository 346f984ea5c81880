namespace ProcessorDesk.Records;

/// <summary>How packs are wrapped. The numbers are stored.</summary>
public enum PackWrap
{
    FreezerPaper = 1,
    Vacuum = 2,
}
