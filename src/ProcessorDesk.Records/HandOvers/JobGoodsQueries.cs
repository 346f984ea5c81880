using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Tickets;

namespace ProcessorDesk.Records;

/// <summary>Reads what of a job can leave.</summary>
public static class JobGoodsQueries
{
    /// <summary>One query. Each of its parts asks for the job by its id too, or SQLite would put a whole table together first.</summary>
    public static JobGoods GoodsOf(this RecordsContext records, int jobId)
    {
        var standing = records.Invoices.Standing().Where(invoice => invoice.JobId == jobId);
        var hung = records.WeighIns.Standing().Where(weighIn => weighIn.JobId == null);
        var found = records.Jobs.AsNoTracking().Where(job => job.Id == jobId)
            .Select(job => new
            {
                Boxes = records.Boxes.Where(box => box.JobId == job.Id && box.JobId == jobId).OrderBy(box => box.Number)
                    .Select(box => new
                    {
                        box.Id,
                        box.Number,
                        box.Weighed.Net,
                        box.Place,
                        box.PackedAt,
                        box.UnpackedAt,
                        box.UnpackedBecause,
                        box.HandOverId,
                        LeftAt = (DateTime?)box.HandOver!.At,
                        Ticket = records.Tickets.Where(ticket => ticket.Kind == TicketKind.Box && ticket.TargetId == box.Id && ticket.VoidedAt == null)
                            .Select(ticket => (long?)ticket.Number).FirstOrDefault(),
                        Contents = box.Contents.OrderBy(content => content.Position).Select(content => new { content.Position, content.AllotmentId, content.Name, content.Packs }).ToList(),
                    })
                    .ToList(),
                Animals = records.Shares.Where(share => share.JobId == job.Id && share.JobId == jobId).OrderBy(share => share.AnimalId)
                    .Select(share => new
                    {
                        share.AnimalId,
                        share.Animal.Species,
                        share.Animal.Tag,
                        share.Animal.ArrivalState,
                        Owners = records.Shares.Where(one => one.AnimalId == share.AnimalId).OrderBy(one => one.Id)
                            .Select(one => new ShareRow(one.JobId, one.Numerator, one.Denominator)).ToList(),
                        HotMg = hung.Where(one => one.AnimalId == share.AnimalId && one.Kind == WeighInKind.HotHanging)
                            .OrderByDescending(one => one.At).ThenByDescending(one => one.Id).Select(one => (long?)one.Net.Milligrams).FirstOrDefault(),
                        ChilledMg = hung.Where(one => one.AnimalId == share.AnimalId && one.Kind == WeighInKind.ChilledHanging)
                            .OrderByDescending(one => one.At).ThenByDescending(one => one.Id).Select(one => (long?)one.Net.Milligrams).FirstOrDefault(),
                        IsInvoiced = standing.Any(invoice => invoice.Lines.Any(line => line.For == PriceFor.Animal && line.OfId == share.AnimalId)),
                        CameInWithAnother = records.Shares.Any(before => before.AnimalId == share.AnimalId && before.Id < share.Id),
                        Parts = share.Animal.Parts.OrderBy(part => part.Id)
                            .Select(part => new
                            {
                                part.Id,
                                part.Kind,
                                part.Note,
                                part.GivenAt,
                                part.GivenTo,
                                part.HandOverId,
                                Ticket = records.Tickets.Where(ticket => ticket.Kind == TicketKind.Part && ticket.TargetId == part.Id && ticket.VoidedAt == null)
                                    .Select(ticket => (long?)ticket.Number).FirstOrDefault(),
                            })
                            .ToList(),
                    })
                    .ToList(),
            })
            .AsSingleQuery()
            .Single();
        return new JobGoods(
            found.Boxes.ConvertAll(box => new JobBox(
                box.Id, box.Number, box.Net, box.Place, box.PackedAt, box.UnpackedAt, box.UnpackedBecause, box.HandOverId, box.LeftAt, Code(box.Ticket),
                box.Contents.ConvertAll(content => new JobBox.Packs(content.AllotmentId, content.Name, content.Packs)))),
            found.Animals.ConvertAll(animal => new JobAnimal(
                ChargedAnimal.Of(
                    animal.AnimalId, animal.Species, animal.Tag, animal.ArrivalState, ShareRow.Of(animal.Owners, jobId),
                    (animal.ChilledMg ?? animal.HotMg) is { } mg ? Weight.FromMilligrams(mg) : null),
                animal.IsInvoiced,
                animal.CameInWithAnother
                    ? []
                    : animal.Parts.ConvertAll(part => new JobPart(part.Id, part.Kind, part.Note, animal.Tag, Code(part.Ticket), part.GivenAt, part.GivenTo, part.HandOverId)))));
    }

    private static TicketCode? Code(long? number) => number is { } known ? TicketCode.FromNumber(known) : null;
}
