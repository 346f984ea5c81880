using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade.Tickets;

namespace ProcessorDesk.Web.Pages.Pickup;

/// <summary>One hand-over as its summary tells it: what left then, what had left before, what was still to come.</summary>
/// <param name="Before">Earlier hand-overs of the job, the first one first.</param>
/// <param name="StillToCome">As it was when this one left; later facts do not change it.</param>
public sealed record HandOverFacts(
    int JobId, int JobNumber, string Owner, TicketCode Claim, IReadOnlyList<Species> Species, HandOverFacts.Left Now, IReadOnlyList<HandOverFacts.Left> Before, IReadOnlyList<Missing> StillToCome)
{
    /// <summary>Three queries.</summary>
    public static HandOverFacts? Read(RecordsContext records, int id)
    {
        var rows =
            (from last in records.HandOvers.AsNoTracking()
             join one in records.HandOvers on last.JobId equals one.JobId
             where last.Id == id && one.Id <= id
             orderby one.Id
             select new
             {
                 one.Id,
                 one.To,
                 one.At,
                 one.Owing,
                 one.JobId,
                 one.Job.Number,
                 Owner = one.Job.Owner.Name,
                 one.Job.CuttingDoneAt,
                 one.Job.SplitAgreedAt,
                 one.Job.BoxedAt,
                 HasCuts = records.WeighIns.Any(weighIn => weighIn.JobId == one.JobId && weighIn.Kind == WeighInKind.CutPack && weighIn.Strike == null),
                 Claim = records.Tickets.Where(ticket => ticket.Kind == TicketKind.Claim && ticket.TargetId == one.JobId).OrderByDescending(ticket => ticket.Number)
                     .Select(ticket => ticket.Number).First(),
             })
            .ToList();
        if (rows is not [.., var found])
            return null;
        var goods = records.GoodsOf(found.JobId);
        var left = rows.ConvertAll(one => new Left(
            one.To, one.At, one.Owing, [.. goods.Boxes.Where(box => box.HandOverId == one.Id)], [.. goods.Parts.Where(part => part.HandOverId == one.Id)]));
        var missing = new MissingGoods(found.CuttingDoneAt, found.SplitAgreedAt, found.HasCuts, found.BoxedAt, records.MadeOf(found.JobId), goods);
        return new HandOverFacts(
            found.JobId, found.Number, found.Owner, TicketCode.FromNumber(found.Claim), [.. goods.Animals.Select(animal => animal.Charged.Species).Distinct()],
            left[^1], left[..^1], missing.At(left[^1].At, _ => "still in the shop"));
    }

    public sealed record Left(string To, DateTime At, bool Owing, IReadOnlyList<JobBox> Boxes, IReadOnlyList<JobPart> Parts)
    {
        public Weight Together(ScaleDivision division) => division.Sum(Boxes.Select(box => box.Net));
    }
}
