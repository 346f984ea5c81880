using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>One line of a batch's process record: a temperature at a probe, or an acidity. Never changed; a wrong one is struck.</summary>
public sealed class BatchReading
{
    private BatchReading()
    {
    }

    /// <param name="takenAt">UTC; when the thermometer was read, which may be before it was typed.</param>
    public static BatchReading OfTemperature(int batchId, ReadingStage stage, int probe, Temperature temperature, DateTime takenAt, DateTime at, int byId) =>
        new() { BatchId = batchId, Stage = stage, Probe = probe, Temperature = temperature, TakenAt = takenAt, At = at, ById = byId };

    /// <param name="acidityHundredths">pH in hundredths: 530 for pH 5.30.</param>
    /// <inheritdoc cref="OfTemperature"/>
    public static BatchReading OfAcidity(int batchId, int acidityHundredths, DateTime takenAt, DateTime at, int byId) =>
        new() { BatchId = batchId, Stage = ReadingStage.Fermenting, AcidityHundredths = acidityHundredths, TakenAt = takenAt, At = at, ById = byId };

    public int Id { get; private set; }

    public int BatchId { get; private set; }

    public ReadingStage Stage { get; private set; }

    /// <summary>Which thermometer, from one; zero for an acidity.</summary>
    public int Probe { get; private set; }

    public Temperature? Temperature { get; private set; }

    public int? AcidityHundredths { get; private set; }

    public DateTime TakenAt { get; private set; }

    public DateTime At { get; private set; }

    public int ById { get; private set; }

    public DateTime? StruckAt { get; private set; }

    public int? StruckById { get; private set; }

    public string? StruckBecause { get; private set; }

    internal void StrikeOut(string because, DateTime at, int byId) => (StruckBecause, StruckAt, StruckById) = (because.Trim(), at, byId);
}
