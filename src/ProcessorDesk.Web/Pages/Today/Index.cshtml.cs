using Microsoft.AspNetCore.Mvc;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Door;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Today;

/// <summary>The home of every hand: what to do next, station by station, what is wrong first.</summary>
public sealed class IndexModel(RecordsContext records, ShopDay shop) : StationPage
{
    private const int MostLines = 6;

    /// <summary>Kinds of work there is some of.</summary>
    public IReadOnlyList<TodaySection> Busy { get; private set; } = [];

    /// <summary>Names of what there is none of, as they stand in a sentence.</summary>
    public IReadOnlyList<string> Idle { get; private set; } = [];

    /// <summary>Nothing has been taken in that is still here.</summary>
    public bool IsEmpty { get; private set; }

    public string Date => shop.Date(shop.Today);

    public bool MayTakeIn => IsOpen("Counter");

    public void OnGet()
    {
        var facts = TodayFacts.Read(records, shop.ToUtc(shop.Today.ToDateTime(TimeOnly.MinValue)));
        var work = new TodayWork(facts, shop, Address);
        var wrong = new TodayTroubles(facts, work, shop, Address, Batch);
        var kitchen = new TodayKitchen(facts, shop, Address, Batch);
        TodaySection[] all =
        [
            wrong.Holds, work.Cooler, kitchen.Batches, kitchen.Resting, work.ToCut, work.ToSplit, kitchen.Waiting, work.ToBox, work.Ready, work.Unclaimed, work.Promised, work.Details, wrong.Struck,
        ];
        Busy = [.. all.Where(section => section.Lines.Count > 0)];
        Idle = [.. all.Where(section => section.Lines.Count == 0).Select(section => section.NoneOf)];
        IsEmpty = facts.Jobs.Count == 0 && facts.Batches.Count == 0;
    }

    /// <summary>The lines shown; the rest is behind the section's link.</summary>
    public IEnumerable<TodayLine> Shown(TodaySection section) => section.Lines.Take(MostLines);

    public int Left(TodaySection section) => Math.Max(0, section.Lines.Count - MostLines);

    public bool IsOpen(string folder) => SignedIn.MayOpen(folder);

    /// <summary>The station's page where the hand may open it, otherwise the job's own.</summary>
    private string Address(string page, string key, int id, int jobId) =>
        Url.IfOpen(SignedIn.Role, page, key, id) ?? FormattableString.Invariant($"/Find/Job/{jobId}");

    /// <summary>The batch's page where the hand may open it, otherwise whose meat is in it.</summary>
    private string Batch(int id, int number) =>
        Url.IfOpen(SignedIn.Role, "/Kitchen/Batch", "id", id) ?? FormattableString.Invariant($"/Find?q=batch+{number}");
}
