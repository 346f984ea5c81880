using Microsoft.EntityFrameworkCore;

namespace ProcessorDesk.Web.Pages.Freezer;

/// <summary>What the freezer sees of a job: what is there to pack, and its boxes.</summary>
/// <param name="Kinds">Products in the order asked, then cuts.</param>
/// <param name="LastTare">Of the last box anybody packed; null before the first.</param>
/// <param name="LastPlace">Where that one went.</param>
/// <param name="Holds">Reasons that keep the boxes from leaving.</param>
public sealed record FreezerJob(
    int Id, int Number, string Owner, bool NameOnPacks, PackWrap Wrap, bool IsMade, DateTime? BoxedAt, DateTime? HandedOverAt,
    IReadOnlyList<PackKind> Kinds, IReadOnlyList<JobBox> Boxes, Weight? LastTare, string? LastPlace, IReadOnlyList<string> Holds)
{
    public IEnumerable<PackKind> Ready => Kinds.Where(kind => kind.IsReady);

    public IEnumerable<JobBox> Standing => Boxes.Where(box => box.UnpackedAt is null);

    /// <summary>All that is ready, weighed where it was made.</summary>
    public Weight Made(ScaleDivision division) => division.Sum(Ready.Select(kind => kind.Made).OfType<Weight>());

    public Weight Boxed(ScaleDivision division) => division.Sum(Standing.Select(box => box.Net));

    /// <summary>Four queries.</summary>
    public static FreezerJob? Read(RecordsContext records, ShopDay shop, int id)
    {
        var holds = records.Touching(id);
        var last = records.Boxes.Where(box => box.Id == records.Boxes.Max(one => one.Id));
        var job = records.Jobs.AsNoTracking().Where(one => one.Id == id)
            .Select(one => new
            {
                one.Number,
                Owner = one.Owner.Name,
                one.Owner.NameOnPacks,
                one.Wrap,
                one.CuttingDoneAt,
                one.MadeAt,
                one.BoxedAt,
                one.HandedOverAt,
                LastTareMg = last.Select(box => (long?)box.Weighed.Tare.Milligrams).FirstOrDefault(),
                LastPlace = last.Select(box => box.Place).FirstOrDefault(),
                Holds = holds
                    .Where(held => held.JobId == one.Id && records.HoldRules.Any(rule => rule.Reason == held.Hold.Reason && rule.Act == HeldAct.HandOver && rule.Stops))
                    .Select(held => new { held.Hold.Id, held.Hold.Reason }).ToList(),
            })
            .AsSingleQuery()
            .SingleOrDefault();
        if (job is null)
            return null;
        var division = shop.Settings.BenchDivision;
        var boxes = records.GoodsOf(id).Boxes;
        var cuts = records.WeighIns.AsNoTracking().Standing().Where(weighIn => weighIn.JobId == id && weighIn.Kind == WeighInKind.CutPack)
            .OrderBy(weighIn => weighIn.Id).Select(weighIn => new { weighIn.Note, weighIn.Net, weighIn.Packs }).ToList();
        return new FreezerJob(
            id, job.Number, job.Owner, job.NameOnPacks, job.Wrap, job.MadeAt is not null, job.BoxedAt, job.HandedOverAt,
            [
                .. records.MadeOf(id).Select(product => PackKind.Of(product, boxes, shop.Now, division)),
                .. cuts.GroupBy(cut => cut.Note ?? Boxing.Cuts).Select(cut => PackKind.OfCut(
                    cut.Key, division.Sum(cut.Select(one => one.Net)), cut.All(one => one.Packs is null) ? null : cut.Sum(one => one.Packs ?? 0),
                    job.CuttingDoneAt is not null, boxes, division)),
            ],
            boxes,
            job.LastTareMg is { } mg ? Weight.FromMilligrams(mg) : null,
            job.LastPlace,
            [.. job.Holds.Select(hold => Wording.Of(hold.Reason)).Distinct()]);
    }
}
