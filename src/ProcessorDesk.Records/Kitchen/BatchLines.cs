using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Process;

namespace ProcessorDesk.Records;

/// <summary>The record of a batch: its ticket, steps, readings and weights, what went back to its entries, and what of it was counted.</summary>
public sealed class BatchLines(IReadOnlyList<BatchLine> all)
{
    /// <summary>In the order they happened.</summary>
    public IReadOnlyList<BatchLine> All { get; } = [.. all.OrderBy(line => line.TakenAt).ThenBy(line => line.At).ThenBy(line => line.Id)];

    public IEnumerable<BatchLine> Of(BatchLineKind kind) => All.Where(line => line.Kind == kind);

    /// <summary>When a step was taken; null where it was not, or was undone.</summary>
    public DateTime? StepAt(BatchStepKind kind) => Of(BatchLineKind.Step).FirstOrDefault(line => line.Stands && line.What == (int)kind)?.TakenAt;

    public IReadOnlyList<ProcessReading> Temperatures(ReadingStage stage) =>
        [.. Readings(stage).Where(line => line.Probe > 0).Select(line => new ProcessReading(line.TakenAt, line.Probe, Temperature.FromHundredthsFahrenheit((int)line.Amount)))];

    public IReadOnlyList<AcidityReading> Acidities =>
        [.. Readings(ReadingStage.Fermenting).Where(line => line.Probe == 0).Select(line => new AcidityReading(line.TakenAt, Ph.FromHundredths((int)line.Amount)))];

    /// <summary>Standing finished weights, each of one load or of all together, with the pieces counted; null where none were.</summary>
    public IReadOnlyList<(int? LoadId, Weight Net, int? Pieces)> Finished =>
        [.. Of(BatchLineKind.Finished).Where(line => line.Stands).Select(line => (line.LoadId, Weight.FromMilligrams(line.Amount), line.Pieces))];

    /// <summary>What stayed in grinder and stuffer, as it was weighed; empty where it was not.</summary>
    public IReadOnlyList<Weight> LeftInMachines => [.. Of(BatchLineKind.LeftInMachines).Where(line => line.Stands).Select(line => Weight.FromMilligrams(line.Amount))];

    /// <summary>Pieces a load was stuffed into; null where they were not counted.</summary>
    public int? StuffedOf(int loadId) => Of(BatchLineKind.StuffedPieces).LastOrDefault(line => line.Stands && line.LoadId == loadId)?.Pieces;

    /// <summary>Null where the batch has no ticket that holds.</summary>
    public Trade.Tickets.TicketCode? Ticket => Of(BatchLineKind.Ticket).Where(line => line.Stands).Select(line => (Trade.Tickets.TicketCode?)Trade.Tickets.TicketCode.FromNumber(line.Amount)).FirstOrDefault();

    /// <summary>What went back to the entries; empty until the release.</summary>
    public IReadOnlyList<FinishedShare> Shares =>
        [.. Of(BatchLineKind.Share).Select(line => new FinishedShare(line.What, line.LoadId, Weight.FromMilligrams(line.Amount), line.Pieces))];

    private IEnumerable<BatchLine> Readings(ReadingStage stage) => Of(BatchLineKind.Reading).Where(line => line.Stands && line.What == (int)stage);
}
