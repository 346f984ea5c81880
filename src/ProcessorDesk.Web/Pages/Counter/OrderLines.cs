using ProcessorDesk.Records;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Counter;

/// <summary>An order in words, line by line: to lay two beside each other, and to see whether a change changed anything.</summary>
internal static class OrderLines
{
    public static IReadOnlyList<(string What, string Wanted)> Of(Job job, ShopDay day, IReadOnlyDictionary<int, string> products) =>
    [
        .. job.CutOrder.OrderBy(line => line.Position).Select(line => (CutMenu.GroupName(line.Group), JobPapers.Wanted(line))),
        .. job.Asks.OrderBy(ask => ask.Position).Select((ask, i) => ($"{i + 1}. {products.GetValueOrDefault(ask.ProductId, "a product")}", JobPapers.Wanted(ask, day.Settings.BenchDivision))),
        ("Pooling", Wording.Of(job.Pooling)),
        ("Wrap", Wording.Of(job.Wrap)),
        ("No pork", job.NoPork ? "yes" : "no"),
        ("Promised for", job.PromisedFor is { } promise ? day.Date(promise) : "nothing promised"),
        ("Notes", job.Notes ?? "none"),
    ];
}
