namespace ProcessorDesk.Trade.Deadlines;

/// <summary>Until when meat that nobody fetches waits. Each step may be taken on the day after.</summary>
/// <param name="NoticeAfter">The last day it waits without a notice.</param>
/// <param name="DisposalAfter">The last day it waits at all; null where no notice was given, and then it waits on.</param>
public sealed record UnclaimedDays(DateOnly NoticeAfter, DateOnly? DisposalAfter)
{
    /// <summary>Whether it counts as unclaimed: the owner is to be called and given notice.</summary>
    public bool IsUnclaimedOn(DateOnly today) => today > NoticeAfter;

    /// <summary>Whether it may be given away or thrown out, by the rule and where the state lets it; never sold.</summary>
    public bool MayGoOn(DateOnly today) => DisposalAfter is { } last && today > last;
}
