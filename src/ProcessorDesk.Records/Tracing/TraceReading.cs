using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Tickets;

namespace ProcessorDesk.Records;

/// <summary>Reads a trace: the batches first, then all lugs, jobs and boxes of them at once; never one by one.</summary>
public static class TraceReading
{
    /// <summary>Five queries. Null where there is no such thing.</summary>
    public static Trace? TraceOf(this RecordsContext records, TraceStart start)
    {
        var batches = Batches(records, start);
        var lugs = Lugs(records, start, [.. batches.Select(batch => batch.Id)]);
        var (jobs, animals) = Jobs(records, start, [.. batches.SelectMany(batch => batch.Places).Select(place => place.JobId).Concat(lugs.Select(lug => lug.JobId)).Distinct()]);
        var boxes = Boxes(records, start, [.. batches.SelectMany(batch => batch.Places).Select(place => place.AllotmentId)]);
        var lots = Lots(records, start, [.. batches.Select(batch => batch.Id)]);
        var trace = new Trace(start, batches, lugs, jobs, animals, boxes, lots);
        return trace.IsThere ? trace : null;
    }

    private static List<TracedBatch> Batches(RecordsContext records, TraceStart start)
    {
        var ids = records.BatchesOf(start);
        return
        [
            .. records.Batches.AsNoTracking().Where(batch => ids.Contains(batch.Id)).OrderBy(batch => batch.Number)
                .Select(batch => new
                {
                    batch.Id,
                    batch.Number,
                    Product = batch.Product.Name,
                    batch.Pooling,
                    batch.PlannedAt,
                    batch.MixedAt,
                    batch.ReleasedAt,
                    batch.EndedAt,
                    batch.EndedBecause,
                    Fat = records.Loads.Where(load => load.BatchId == batch.Id && load.FatWeighed != null).Sum(load => load.FatWeighed!.Value.Milligrams),
                    Added = records.Loads.Where(load => load.BatchId == batch.Id).SelectMany(load => load.Ingredients).Sum(line => line.Weighed.Milligrams),
                    Finished = records.WeighIns.Where(one => one.BatchId == batch.Id && one.Kind == WeighInKind.FinishedProduct && !records.Strikes.Any(strike => strike.WeighInId == one.Id)).Sum(one => one.Net.Milligrams),
                    Left = records.WeighIns.Where(one => one.BatchId == batch.Id && one.Kind == WeighInKind.LeftInMachines && !records.Strikes.Any(strike => strike.WeighInId == one.Id)).Sum(one => one.Net.Milligrams),
                    ToWeigh = records.Loads.Count(load => load.BatchId == batch.Id && load.MixedAt != null && !records.WeighIns.Any(one =>
                        one.BatchId == batch.Id && (one.LoadId == null || one.LoadId == load.Id) && one.Kind == WeighInKind.FinishedProduct && !records.Strikes.Any(strike => strike.WeighInId == one.Id))),
                    Holds = records.Holds.Where(hold => hold.BatchId == batch.Id && hold.ReleasedAt == null).Select(hold => new TracedHold(hold.Reason, hold.Note)).ToList(),
                    Places = records.BatchEntries.Where(entry => entry.BatchId == batch.Id && entry.LeftAt == null).OrderBy(entry => entry.Id)
                        .Select(entry => new
                        {
                            entry.Id,
                            entry.JobId,
                            entry.AllotmentId,
                            Back = records.FinishedShares.Where(share => share.EntryId == entry.Id).Sum(share => share.Weight.Milligrams),
                        })
                        .ToList(),
                })
                .AsSingleQuery().AsEnumerable()
                .Select(batch => new TracedBatch(
                    batch.Id, batch.Number, batch.Product, batch.Pooling, batch.PlannedAt, batch.MixedAt, batch.ReleasedAt, batch.EndedAt, batch.EndedBecause,
                    Weight.FromMilligrams(batch.Fat), Weight.FromMilligrams(batch.Added), Weight.FromMilligrams(batch.Left), batch.Finished > 0 ? Weight.FromMilligrams(batch.Finished) : null,
                    batch.ToWeigh == 0, batch.Holds,
                    batch.Places.ConvertAll(place => new TracedPlace(place.Id, place.JobId, place.AllotmentId, batch.ReleasedAt is null ? null : Weight.FromMilligrams(place.Back)))))
        ];
    }

    /// <summary>Lugs that were drawn into the batches, be it by a mistake that was struck, and those the trace starts from, with all their draws.</summary>
    private static List<TracedLug> Lugs(RecordsContext records, TraceStart start, int[] batches)
    {
        var drawn = records.Draws.Where(draw => EF.Parameter(batches).Contains(draw.Load.BatchId));
        // A lot is in hundreds of batches; of their meat only what has no place there tells more than the places do.
        var ids = (start.Kind == TracedKind.IngredientLot ? drawn.Where(draw => draw.EntryId == null) : drawn).Select(draw => draw.FillingId).Union(records.LugsOf(start));
        var rows =
            from filling in records.Fillings.AsNoTracking()
            join draw in records.Draws on filling.Id equals draw.FillingId into draws
            from draw in draws.DefaultIfEmpty()
            where ids.Contains(filling.Id)
            orderby filling.Id, draw.Id
            select new
            {
                filling.Id,
                filling.Lug.Number,
                filling.JobId,
                filling.OpenedAt,
                filling.EmptiedAt,
                Lean = records.WeighIns.Where(one => one.FillingId == filling.Id && one.Kind == WeighInKind.LeanTrim && !records.Strikes.Any(strike => strike.WeighInId == one.Id))
                    .Sum(one => one.Net.Milligrams),
                HasCuts = records.WeighIns.Any(one => one.FillingId == filling.Id && one.Kind == WeighInKind.CutPack && !records.Strikes.Any(strike => strike.WeighInId == one.Id)),
                Draw = draw,
                BatchId = (int?)draw.Load.BatchId,
                Batch = (int?)draw.Load.Batch.Number,
                Load = (int?)draw.Load.Number,
                Animals = filling.Animals.Select(one => one.AnimalId).ToList(),
            };
        return
        [
            .. rows.AsSingleQuery().AsEnumerable().GroupBy(row => row.Id).Select(group =>
            {
                var lug = group.First();
                return new TracedLug(
                    lug.Id, lug.Number, lug.JobId, lug.OpenedAt, lug.EmptiedAt, Weight.FromMilligrams(lug.Lean), lug.HasCuts, lug.Animals,
                    [
                        .. group.Where(row => row.Draw is not null).Select(row => new TracedDraw(
                            row.Draw.Id, lug.Id, row.BatchId!.Value, row.Batch!.Value, row.Load!.Value, row.Draw.EntryId, row.Draw.Weighed, row.Draw.At,
                            row.Draw.AlreadyInBecause, row.Draw.StruckAt, row.Draw.StruckBecause))
                    ]);
            })
        ];
    }

    /// <summary>The jobs with their owners and the animals they have a share of.</summary>
    private static (List<TracedJob> Jobs, List<TracedAnimal> Animals) Jobs(RecordsContext records, TraceStart start, int[] known)
    {
        var ids = records.Jobs.Where(job => EF.Parameter(known).Contains(job.Id)).Select(job => job.Id).Union(records.JobsOf(start));
        var rows =
            (from job in records.Jobs.AsNoTracking()
             join share in records.Shares on job.Id equals share.JobId into shares
             from share in shares.DefaultIfEmpty()
             where ids.Contains(job.Id)
             orderby job.Number, share.AnimalId
             select new
             {
                 job.Id,
                 job.Number,
                 job.Owner.Name,
                 job.Owner.Phone,
                 share.Animal,
                 OnJob = records.Holds.Where(hold => hold.JobId == job.Id && hold.ReleasedAt == null).Select(hold => hold.Reason).ToList(),
                 OnAnimal = records.Holds.Where(hold => hold.AnimalId == share.AnimalId && hold.ReleasedAt == null).Select(hold => hold.Reason).ToList(),
                 Parts = records.Parts.Where(part => part.AnimalId == share.AnimalId).Select(part => new { part.Id, part.Kind, part.GivenAt, part.GivenTo }).ToList(),
                 Calls = records.OwnerCalls.Where(call => call.JobId == job.Id && call.About == start.Kind && call.AboutId == start.Id)
                     .Select(call => new TracedCall(
                         call.Id, call.Outcome, call.Words, call.At, records.Staff.Where(staff => staff.Id == call.ById).Select(staff => staff.Initials).First()))
                     .ToList(),
             })
            .AsSingleQuery().ToList();
        return (
            [
                .. rows.GroupBy(row => row.Id).Select(group => (group.First(), group)).Select(job => new TracedJob(
                    job.Item1.Id, job.Item1.Number, job.Item1.Name, job.Item1.Phone, [.. job.group.Select(row => row.Animal?.Id).OfType<int>()],
                    [.. job.Item1.OnJob.Distinct()], [.. job.Item1.Calls.OrderBy(call => call.Id)]))
            ],
            [
                .. rows.Where(row => row.Animal is not null).DistinctBy(row => row.Animal.Id).Select(row => new TracedAnimal(
                    row.Animal.Id, row.Animal.Species, row.Animal.Tag, row.Animal.DiseaseTest, row.Animal.SampleNumber, row.Animal.ResultOn, row.Animal.HarvestArea, row.Animal.ArrivedAt,
                    [.. row.OnAnimal.Distinct()], [.. row.Parts.DistinctBy(part => part.Id).Select(part => new TracedPart(part.Kind, part.GivenAt, part.GivenTo))]))
            ]);
    }

    /// <summary>Boxes with packs of the batches' products, those of the cuts of what it starts from, and the one it starts from.</summary>
    private static List<TracedBox> Boxes(RecordsContext records, TraceStart start, int[] allotments)
    {
        var ids = start.Kind == TracedKind.Box
            ? records.Boxes.Where(box => box.Id == start.Id).Select(box => box.Id)
            : records.BoxContents.Where(content => content.AllotmentId != null && EF.Parameter(allotments).Contains(content.AllotmentId.Value)).Select(content => content.BoxId)
                .Union(records.BoxesWithCutsOf(start));
        var rows =
            from box in records.Boxes.AsNoTracking()
            join content in records.BoxContents on box.Id equals content.BoxId
            where ids.Contains(box.Id)
            orderby box.JobId, box.Number, content.Position
            select new
            {
                Box = box,
                box.Weighed.Net,
                LeftAt = (DateTime?)box.HandOver!.At,
                LeftWith = box.HandOver!.To,
                Ticket = records.Tickets.Where(ticket => ticket.Kind == TicketKind.Box && ticket.TargetId == box.Id && ticket.VoidedAt == null).Select(ticket => (long?)ticket.Number).FirstOrDefault(),
                Content = content,
            };
        return
        [
            .. rows.AsEnumerable().GroupBy(row => row.Box.Id).Select(group =>
            {
                var (box, first) = (group.First().Box, group.First());
                return new TracedBox(
                    box.Id, box.Number, box.JobId, first.Net, box.Place, box.PackedAt, box.UnpackedAt, box.UnpackedBecause, first.LeftAt, first.LeftWith,
                    first.Ticket is { } number ? TicketCode.FromNumber(number) : null,
                    [.. group.Select(row => new TracedPacks(row.Content.AllotmentId, row.Content.Name, row.Content.Packs))]);
            })
        ];
    }

    private static List<TracedLot> Lots(RecordsContext records, TraceStart start, int[] batches)
    {
        var loads = records.Loads.Where(load => EF.Parameter(batches).Contains(load.BatchId)).Select(load => load.Id);
        var ofLot =
            from lot in records.IngredientLots
            join use in records.LotUses on lot.Id equals use.LotId into uses
            from use in uses.DefaultIfEmpty()
            where lot.Id == start.Id
            select new { Lot = lot, Use = use };
        var ofBatches = records.LotUses.Where(use => loads.Contains(use.LoadId)).Select(use => new { use.Lot, Use = use });
        var rows = (start.Kind == TracedKind.IngredientLot ? ofLot : ofBatches).AsNoTracking()
            .Select(row => new { row.Lot, row.Lot.Ingredient.Name, row.Lot.Ingredient.Kind, row.Use, BatchId = (int?)row.Use.Load.BatchId, Batch = (int?)row.Use.Load.Batch.Number, Load = (int?)row.Use.Load.Number });
        return
        [
            .. rows.AsEnumerable().GroupBy(row => row.Lot.Id).Select(group =>
            {
                var (lot, first) = (group.First().Lot, group.First());
                return new TracedLot(
                    lot.Id, first.Name, first.Kind, lot.LotCode, lot.Supplier, lot.Establishment, lot.ReceivedOn, lot.Amount, lot.Pieces, lot.UsedUpAt, lot.StruckBecause,
                    [
                        .. group.Where(row => row.Use is not null).OrderBy(row => row.Use.Id).Select(row => new TracedUse(
                            row.Use.Id, lot.Id, row.BatchId!.Value, row.Batch!.Value, row.Load!.Value, row.Use.Amount, row.Use.Pieces, row.Use.StruckAt, row.Use.StruckBecause))
                    ]);
            })
        ];
    }
}
