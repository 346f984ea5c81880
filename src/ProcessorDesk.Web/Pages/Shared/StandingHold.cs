using ProcessorDesk.Paper;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Shared;

/// <summary>A hold as a page or a paper says it: whose, why, since when, and which acts it stops.</summary>
/// <param name="Stopped">"cutting, splitting the grind"; empty where it stops nothing.</param>
public sealed record StandingHold(string Whose, string Reason, string? Note, string Since, string Stopped)
{
    /// <summary>The same on paper.</summary>
    public HoldNotice ToNotice() =>
        new($"{Whose}: {Reason}", (Stopped == "" ? "Ask the manager." : $"Not until it is released: {Stopped}.") + (Note is null ? "" : $" {Note}."));

    /// <summary>Reads the holds of some query in one go; they must be standing ones.</summary>
    public static IReadOnlyList<StandingHold> Of(RecordsContext records, IQueryable<Hold> holds, ShopDay shop) =>
    [
        .. holds
            .Select(hold => new
            {
                hold.Id,
                hold.Reason,
                hold.Note,
                hold.PlacedAt,
                hold.AnimalId,
                Tag = hold.Animal == null ? null : hold.Animal.Tag,
                Stopped = records.HoldRules.Where(rule => rule.Reason == hold.Reason && rule.Stops).Select(rule => rule.Act).ToList(),
            })
            .AsEnumerable()
            .OrderBy(hold => hold.Id)
            .Select(hold => new StandingHold(
                hold.AnimalId is null ? "The whole job" : hold.Tag is null ? "Animal without a tag" : "Tag " + hold.Tag,
                Wording.Of(hold.Reason),
                hold.Note,
                shop.Date(hold.PlacedAt),
                string.Join(", ", hold.Stopped.Order().Select(Wording.Of))))
    ];
}
