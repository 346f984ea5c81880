namespace ProcessorDesk.Records;

/// <summary>What happens to an animal without a tag. The numbers are stored.</summary>
public enum TagRule
{
    /// <summary>It is not taken in.</summary>
    Refuse = 1,

    /// <summary>It is taken in and held until the tag is there.</summary>
    Hold = 2,
}
