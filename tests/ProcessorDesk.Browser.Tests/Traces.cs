using System.Globalization;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Tests.Harness;

namespace ProcessorDesk.Browser.Tests;

/// <summary>Traces from each kind of thing, those that reach farthest first.</summary>
internal static class Traces
{
    public static List<string> Of(ShopUnderTest shop, string page) => shop.Read(records =>
    {
        int[] One(IQueryable<int> ids) => [.. ids.Take(1)];
        // The newest batch of several owners, the newest with meat in it that has no place there, the newest that is released.
        var pooled = One(records.Batches.Where(batch => batch.Pooling == Pooling.Pooled).OrderByDescending(batch => batch.Entries.Count).ThenByDescending(batch => batch.Id).Select(batch => batch.Id));
        var mistaken = One(records.Draws.Where(draw => draw.EntryId == null && draw.StruckAt == null).OrderByDescending(draw => draw.Id).Select(draw => draw.Load.BatchId));
        var drawn = One(records.Draws.Where(draw => draw.StruckAt == null && pooled.Contains(draw.Load.BatchId)).OrderBy(draw => draw.Id).Select(draw => draw.FillingId));
        var jobs = One(records.Fillings.Where(filling => drawn.Contains(filling.Id)).Select(filling => filling.JobId));
        List<(string Kind, int[] Ids)> starts =
        [
            ("batch", [.. pooled.Concat(mistaken).Distinct()]),
            ("animal", One(records.Shares.Where(share => jobs.Contains(share.JobId)).Select(share => share.AnimalId))),
            ("lot", One(records.IngredientLots.OrderBy(lot => lot.Id).Select(lot => lot.Id))),
            ("box", One(records.Boxes.Where(box => box.HandOverId != null).OrderByDescending(box => box.Id).Select(box => box.Id))),
            ("lug", drawn),
            ("job", jobs),
        ];
        return page switch
        {
            "/Trace/Of" or "/Trace/Sheet" => Addresses(starts),
            "/Trace/Call" => pooled.SelectMany(batch => records.BatchEntries.Where(entry => entry.BatchId == batch).Select(entry => entry.JobId).Take(1)
                .AsEnumerable().Select(job => string.Create(CultureInfo.InvariantCulture, $"batch/{batch}/{job}"))).ToList(),
            _ => throw new InvalidOperationException($"{page} asks for a thing to trace: say here which one it is looked at with."),
        };
    });

    private static List<string> Addresses(List<(string Kind, int[] Ids)> starts) =>
        [.. starts.SelectMany(start => start.Ids.Select(id => string.Create(CultureInfo.InvariantCulture, $"{start.Kind}/{id}")))];
}
