namespace ProcessorDesk.Records;

/// <summary>Reads the record of a batch.</summary>
public static class BatchLineQueries
{
    /// <summary>One query.</summary>
    public static BatchLines LinesOf(this RecordsContext records, int batchId)
    {
        var steps = records.BatchSteps.Where(step => step.BatchId == batchId).Select(step => new BatchLineRow
        {
            Kind = (int)BatchLineKind.Step,
            Id = step.Id,
            What = (int)step.Kind,
            LoadId = (int?)null,
            Probe = 0,
            Amount = 0L,
            Pieces = (int?)null,
            TakenAt = step.At,
            At = step.At,
            By = records.Staff.Where(staff => staff.Id == step.ById).Select(staff => staff.Initials).First(),
            StruckAt = step.UndoneAt,
            StruckBy = records.Staff.Where(staff => staff.Id == step.UndoneById).Select(staff => staff.Initials).FirstOrDefault(),
            Because = step.UndoneBecause,
        });
        var readings = records.BatchReadings.Where(reading => reading.BatchId == batchId).Select(reading => new BatchLineRow
        {
            Kind = (int)BatchLineKind.Reading,
            Id = reading.Id,
            What = (int)reading.Stage,
            LoadId = (int?)null,
            Probe = reading.Probe,
            Amount = (long)(reading.Temperature == null ? reading.AcidityHundredths!.Value : reading.Temperature.Value.HundredthsFahrenheit),
            Pieces = (int?)null,
            TakenAt = reading.TakenAt,
            At = reading.At,
            By = records.Staff.Where(staff => staff.Id == reading.ById).Select(staff => staff.Initials).First(),
            StruckAt = reading.StruckAt,
            StruckBy = records.Staff.Where(staff => staff.Id == reading.StruckById).Select(staff => staff.Initials).FirstOrDefault(),
            Because = reading.StruckBecause,
        });
        var weighed = records.WeighIns.Where(weighIn => weighIn.BatchId == batchId).Select(weighIn => new BatchLineRow
        {
            Kind = weighIn.Kind == WeighInKind.LeftInMachines ? (int)BatchLineKind.LeftInMachines : (int)BatchLineKind.Finished,
            Id = weighIn.Id,
            What = 0,
            LoadId = weighIn.LoadId,
            Probe = 0,
            Amount = weighIn.Net.Milligrams,
            Pieces = weighIn.Packs,
            TakenAt = weighIn.At,
            At = weighIn.At,
            By = records.Staff.Where(staff => staff.Id == weighIn.ById).Select(staff => staff.Initials).First(),
            StruckAt = (DateTime?)weighIn.Strike!.At,
            StruckBy = records.Staff.Where(staff => staff.Id == weighIn.Strike!.ById).Select(staff => staff.Initials).FirstOrDefault(),
            Because = (string?)weighIn.Strike!.Because,
        });
        var tickets = records.Tickets.Where(ticket => ticket.Kind == TicketKind.Batch && ticket.TargetId == batchId).Select(ticket => new BatchLineRow
        {
            Kind = (int)BatchLineKind.Ticket,
            Id = 0,
            What = 0,
            LoadId = (int?)null,
            Probe = 0,
            Amount = ticket.Number,
            Pieces = (int?)null,
            TakenAt = ticket.At,
            At = ticket.At,
            By = records.Batches.Where(batch => batch.Id == batchId).SelectMany(batch => records.Staff.Where(staff => staff.Id == batch.PlannedById).Select(staff => staff.Initials)).First(),
            StruckAt = ticket.VoidedAt,
            StruckBy = (string?)null,
            Because = (string?)null,
        });
        var shares = records.FinishedShares.Where(share => share.Entry.BatchId == batchId).Select(share => new BatchLineRow
        {
            Kind = (int)BatchLineKind.Share,
            Id = share.Id,
            What = share.EntryId,
            LoadId = share.LoadId,
            Probe = 0,
            Amount = share.Weight.Milligrams,
            Pieces = share.Pieces,
            TakenAt = share.Entry.Batch.ReleasedAt!.Value,
            At = share.Entry.Batch.ReleasedAt!.Value,
            By = records.Staff.Where(staff => staff.Id == share.Entry.Batch.ReleasedById).Select(staff => staff.Initials).First(),
            StruckAt = (DateTime?)null,
            StruckBy = (string?)null,
            Because = (string?)null,
        });
        return new BatchLines(
        [
            .. steps.Concat(readings).Concat(weighed).Concat(tickets).Concat(shares)
                .Concat(records.MixedIn(batchId)).Concat(records.StuffedIn(batchId)).Concat(records.DripIn(batchId)).Concat(records.CuredAgainIn(batchId))
                .AsEnumerable().Select(row => row.ToLine())
        ]);
    }
}
