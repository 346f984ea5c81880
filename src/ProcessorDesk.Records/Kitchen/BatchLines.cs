using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Process;

namespace ProcessorDesk.Records;

/// <summary>What a line of a batch's record is.</summary>
public enum BatchLineKind
{
    Step = 1,
    Reading = 2,
    Finished = 3,
}

/// <summary>One line of a batch's record; a struck or undone one stays in it.</summary>
/// <param name="What">The step's kind, the reading's stage; zero for a finished weight.</param>
/// <param name="LoadId">For the finished weight of one load.</param>
/// <param name="Probe">For a temperature; zero for all else.</param>
/// <param name="Amount">Milligrams, hundredths of °F, or hundredths of pH where the probe is zero.</param>
/// <param name="TakenAt">When it happened; <paramref name="At"/> is when it was written down.</param>
public sealed record BatchLine(
    BatchLineKind Kind, int Id, int What, int? LoadId, int Probe, long Amount, DateTime TakenAt, DateTime At, string By, DateTime? StruckAt, string? StruckBy, string? Because)
{
    public bool Stands => StruckAt is null;
}

/// <summary>The record of a batch: its steps, readings and finished weights.</summary>
public sealed class BatchLines(IReadOnlyList<BatchLine> all)
{
    /// <summary>In the order they happened.</summary>
    public IReadOnlyList<BatchLine> All { get; } = [.. all.OrderBy(line => line.TakenAt).ThenBy(line => line.At).ThenBy(line => line.Id)];

    public IEnumerable<BatchLine> Of(BatchLineKind kind) => All.Where(line => line.Kind == kind);

    /// <summary>When a step was taken; null where it was not, or was undone.</summary>
    public DateTime? StepAt(BatchStepKind kind) => Of(BatchLineKind.Step).FirstOrDefault(line => line.Stands && line.What == (int)kind)?.TakenAt;

    public IReadOnlyList<ProcessReading> Temperatures(ReadingStage stage) =>
        [.. Readings(stage).Where(line => line.Probe > 0).Select(line => new ProcessReading(line.TakenAt, line.Probe, Temperature.FromHundredthsFahrenheit((int)line.Amount)))];

    /// <summary>Standing finished weights, each of one load or of all together.</summary>
    public IReadOnlyList<(int? LoadId, Weight Net)> Finished =>
        [.. Of(BatchLineKind.Finished).Where(line => line.Stands).Select(line => (line.LoadId, Weight.FromMilligrams(line.Amount)))];

    private IEnumerable<BatchLine> Readings(ReadingStage stage) => Of(BatchLineKind.Reading).Where(line => line.Stands && line.What == (int)stage);
}

/// <summary>Reads the record of a batch.</summary>
public static class BatchLineQueries
{
    /// <summary>One query.</summary>
    public static BatchLines LinesOf(this RecordsContext records, int batchId)
    {
        var steps = records.BatchSteps.Where(step => step.BatchId == batchId).Select(step => new
        {
            Kind = (int)BatchLineKind.Step,
            step.Id,
            What = (int)step.Kind,
            LoadId = (int?)null,
            Probe = 0,
            Amount = 0L,
            TakenAt = step.At,
            step.At,
            By = records.Staff.Where(staff => staff.Id == step.ById).Select(staff => staff.Initials).First(),
            StruckAt = step.UndoneAt,
            StruckBy = records.Staff.Where(staff => staff.Id == step.UndoneById).Select(staff => staff.Initials).FirstOrDefault(),
            Because = step.UndoneBecause,
        });
        var readings = records.BatchReadings.Where(reading => reading.BatchId == batchId).Select(reading => new
        {
            Kind = (int)BatchLineKind.Reading,
            reading.Id,
            What = (int)reading.Stage,
            LoadId = (int?)null,
            reading.Probe,
            Amount = (long)(reading.Temperature == null ? reading.AcidityHundredths!.Value : reading.Temperature.Value.HundredthsFahrenheit),
            reading.TakenAt,
            reading.At,
            By = records.Staff.Where(staff => staff.Id == reading.ById).Select(staff => staff.Initials).First(),
            reading.StruckAt,
            StruckBy = records.Staff.Where(staff => staff.Id == reading.StruckById).Select(staff => staff.Initials).FirstOrDefault(),
            Because = reading.StruckBecause,
        });
        var finished = records.WeighIns.Where(weighIn => weighIn.BatchId == batchId).Select(weighIn => new
        {
            Kind = (int)BatchLineKind.Finished,
            weighIn.Id,
            What = 0,
            weighIn.LoadId,
            Probe = 0,
            Amount = weighIn.Net.Milligrams,
            TakenAt = weighIn.At,
            weighIn.At,
            By = records.Staff.Where(staff => staff.Id == weighIn.ById).Select(staff => staff.Initials).First(),
            StruckAt = (DateTime?)weighIn.Strike!.At,
            StruckBy = records.Staff.Where(staff => staff.Id == weighIn.Strike!.ById).Select(staff => staff.Initials).FirstOrDefault(),
            Because = (string?)weighIn.Strike!.Because,
        });
        return new BatchLines([.. steps.Concat(readings).Concat(finished).AsEnumerable().Select(line => new BatchLine(
            (BatchLineKind)line.Kind, line.Id, line.What, line.LoadId, line.Probe, line.Amount, line.TakenAt, line.At, line.By, line.StruckAt, line.StruckBy, line.Because))]);
    }
}
