using Microsoft.AspNetCore.Mvc;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;
using ProcessorDesk.Web.Pages.Find;

namespace ProcessorDesk.Web.Pages.Trace;

/// <summary>Asks what is to be traced. What can mean one thing alone leads straight to its trace; otherwise there is a choice.</summary>
public sealed class IndexModel(RecordsContext records, ShopDay shop) : StationPage
{
    public string Text { get; private set; } = "";

    public bool CodeIsWrong { get; private set; }

    public IReadOnlyList<Found> Found { get; private set; } = [];

    public IActionResult OnGet(string? q)
    {
        var asked = Asked.Of(q);
        (Text, CodeIsWrong) = (asked.Text, asked.CodeIsWrong);
        if (Text == "")
            return Page();
        if (records.OfTicket(asked) is { } start)
            return LocalRedirect(TraceAddress.Page("Of", start));
        Found = [.. Of(asked)];
        return Found is [var only] ? LocalRedirect(only.Address) : Page();
    }

    /// <summary>A word before a number says which number it is: "batch 12", "lug 7", "job 1042".</summary>
    private IEnumerable<Found> Of(Asked asked)
    {
        if (asked.Batch is { } batch)
            return records.BatchNumbered(batch, shop);
        bool Says(string word) => asked.Text.StartsWith(word, StringComparison.OrdinalIgnoreCase);
        if (Says("lot "))
            return records.Lots(asked.Text[4..].Trim(), shop);
        if (asked.Number is { } said && Says("lug"))
            return records.LugNumbered(said, shop);
        if (asked.Number is { } job && Says("job"))
            return records.JobNumbered(job);
        var numbered = asked.Number is { } number ? records.JobNumbered(number).Concat(records.BatchNumbered(number, shop)).Concat(records.LugNumbered(number, shop)) : [];
        return numbered.Concat(asked.TagKey is { } key ? records.Tagged(key, shop) : []).Concat(records.Lots(asked.Text, shop));
    }
}
