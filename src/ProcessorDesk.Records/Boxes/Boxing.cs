using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>Packing boxes, moving and unpacking them.</summary>
public static class Boxing
{
    /// <summary>What cuts are called where nobody said which.</summary>
    public const string Cuts = "Cuts";

    /// <summary>Only what is released, or cut and packed. Its result is the box's id.</summary>
    public static Outcome PackBox(this RecordsContext records, BoxOrder order, Act act)
    {
        var job = records.Jobs.Single(one => one.Id == order.JobId);
        var contents = order.Contents.Where(one => one.Packs > 0).ToList();
        var products = records.MadeOf(order.JobId).ToDictionary(one => one.AllotmentId);
        if (Refusals(job, order, contents, products) is { Count: > 0 } findings)
            return Outcome.Refused(findings);

        var division = records.Shop.AsNoTracking().Single().BenchDivision;
        var number = records.Boxes.Where(box => box.JobId == order.JobId).Max(box => (int?)box.Number) ?? 0;
        var weighed = WeighIn.OfJob(WeighInKind.Box, order.JobId, null, order.Gross, order.Tare, new Reading("bench", division), act.Now, act.Hand.Id);
        var packed = contents.Select((one, i) =>
            new BoxContent(i, one.AllotmentId, one.AllotmentId is { } id ? products[id].Name : Texts.OrNull(one.Cut) ?? Cuts, one.Packs));
        var box = new Box(number + 1, weighed, order.Place, packed, act.Now, act.Hand.Id);
        records.Boxes.Add(box);
        job.BoxesReopened();
        records.SaveChanges();
        act.NewTicket(TicketKind.Box, box.Id);
        return Outcome.Done(box.Id);
    }

    public static Outcome MoveBox(this RecordsContext records, int boxId, string? place, Act act)
    {
        var box = records.Boxes.Single(one => one.Id == boxId);
        if (NotHere(box) is { } refusal)
            return Outcome.Refused(refusal);
        if (string.IsNullOrWhiteSpace(place))
            return Outcome.Refused(new Finding("Place", "Write where it stands now."));
        box.MoveTo(place);
        return Outcome.Done(boxId);
    }

    /// <summary>The box is taken apart again: its packs are to be boxed anew, its weight is struck out, its ticket is void.</summary>
    public static Outcome UnpackBox(this RecordsContext records, int boxId, string? because, Act act)
    {
        var box = records.Boxes.Include(one => one.Job).Include(one => one.Weighed).ThenInclude(weighed => weighed.Strike).Single(one => one.Id == boxId);
        if (NotHere(box) is { } refusal)
            return Outcome.Refused(refusal);
        if (string.IsNullOrWhiteSpace(because))
            return Outcome.Refused(new Finding("Because", "Say why the box is unpacked."));
        box.Unpack(because, act.Now, act.Hand.Id);
        box.Job.BoxesReopened();
        foreach (var ticket in records.Tickets.Where(ticket => ticket.Kind == TicketKind.Box && ticket.TargetId == boxId).ToList())
            ticket.Void(act.Now);
        return Outcome.Done(boxId);
    }

    /// <summary>
    /// Everything of the job is made and in boxes: it is ready to go. Where nothing was left to box, as where all was thrown out, that is
    /// said too. Closes the job where all of it left before.
    /// </summary>
    public static Outcome FinishBoxing(this RecordsContext records, int jobId, Act act)
    {
        var job = records.Jobs.Single(one => one.Id == jobId);
        if (job.BoxedAt is not null)
            return Outcome.Refused(new Finding("", "This was said before: everything is in boxes."));
        List<Finding> findings = job.MadeAt is null ? [new Finding("", "Not everything is made yet. Finish its batches in the kitchen first.")] : [];
        var boxed = records.Boxes.Where(box => box.JobId == jobId && box.UnpackedAt == null)
            .Join(records.BoxContents, box => box.Id, content => content.BoxId, (box, content) => content.AllotmentId).Distinct().ToList();
        findings.AddRange(records.MadeOf(jobId).Where(product => product.IsReleased && !boxed.Contains(product.AllotmentId))
            .Select(product => new Finding("", $"No box has {product.Name} in it.")));
        if (!boxed.Contains(null) && records.WeighIns.Standing().Any(one => one.JobId == jobId && one.Kind == WeighInKind.CutPack))
            findings.Add(new Finding("", "No box has the cuts in it."));
        if (findings.Count > 0)
            return Outcome.Refused(findings);
        job.Boxed(act.Now, act.Hand.Id);
        if (records.HandOvers.Where(one => one.JobId == jobId).OrderByDescending(one => one.Id).FirstOrDefault() is { } last)
            records.CloseIfAllLeft(job, last.At, last.ById, last.To);
        return Outcome.Done(jobId);
    }

    private static List<Finding> Refusals(Job job, BoxOrder order, List<PacksIn> contents, Dictionary<int, MadeProduct> products)
    {
        List<Finding> findings = [];
        if (job.HandedOverAt is not null)
            findings.Add(new Finding("", "This job was handed over, so nothing more is packed for it."));
        if (contents.Count == 0)
            findings.Add(new Finding("Packs", "Count the packs that go into the box."));
        if (order.Gross <= order.Tare)
            findings.Add(new Finding("Gross", "Type what the scale shows with the full box on it, more than its tare."));
        foreach (var allotmentId in contents.Select(one => one.AllotmentId).Distinct())
        {
            if (allotmentId is null && job.CuttingDoneAt is null)
                findings.Add(new Finding("Packs", "Cutting is not finished, so the cuts can't be boxed yet."));
            if (allotmentId is { } id && products.GetValueOrDefault(id) is not { IsReleased: true })
                findings.Add(new Finding("Packs", $"{(products.TryGetValue(id, out var product) ? product.Name : "That product")} is not released yet. Finish its batch in the kitchen first."));
        }

        return findings;
    }

    private static Finding? NotHere(Box box) =>
        box.HandOverId is not null ? new Finding("", "This box was handed over.")
        : box.UnpackedAt is not null ? new Finding("", "This box was unpacked before.")
        : null;
}
