using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>
/// One reading of a scale. Never changed or deleted: the database refuses. A wrong one is struck (<see cref="Strike"/>).
/// </summary>
public sealed class WeighIn
{
    private WeighIn()
    {
    }

    private WeighIn(WeighInKind kind, Weight gross, Weight tare, Reading reading, DateTime at, int byId)
    {
        if (tare.IsNegative || gross < tare)
            throw new ArgumentOutOfRangeException(nameof(gross), "Net is gross less tare and never negative.");
        Kind = kind;
        Gross = gross;
        Tare = tare;
        Net = gross - tare;
        KeyedDivision = reading.Division;
        Scale = reading.Scale;
        Note = Texts.OrNull(reading.Note);
        Packs = reading.Packs;
        At = at;
        ById = byId;
    }

    public int Id { get; private set; }

    public WeighInKind Kind { get; private set; }

    public Weight Gross { get; private set; }

    public Weight Tare { get; private set; }

    public Weight Net { get; private set; }

    /// <summary>The unit and division it was keyed at.</summary>
    public ScaleDivision KeyedDivision { get; private set; }

    public string Scale { get; private set; } = "";

    /// <summary>What the person added, such as why something was discarded.</summary>
    public string? Note { get; private set; }

    /// <summary>Packs weighed together, or pieces of a batch; null where none were counted.</summary>
    public int? Packs { get; private set; }

    public DateTime At { get; private set; }

    public int ById { get; private set; }

    /// <summary>The animal, for weights before the division among owners and wherever one animal is meant.</summary>
    public int? AnimalId { get; private set; }

    public Animal? Animal { get; private set; }

    /// <summary>The job, for weights after the division.</summary>
    public int? JobId { get; private set; }

    public Job? Job { get; private set; }

    public int? FillingId { get; private set; }

    public Filling? Filling { get; private set; }

    /// <summary>The batch, for finished weight before it is shared out.</summary>
    public int? BatchId { get; private set; }

    public Batch? Batch { get; private set; }

    /// <summary>The one load that was weighed; null where all loads of the batch were weighed together.</summary>
    public int? LoadId { get; private set; }

    public Strike? Strike { get; private set; }

    /// <summary>Where and how it was keyed, to be booked so again.</summary>
    internal Reading AsRead => new(Scale, KeyedDivision, Note, Packs);

    /// <summary>A weight of the whole animal: arrival, hanging.</summary>
    public static WeighIn OfAnimal(WeighInKind kind, int animalId, Weight weight, Reading reading, DateTime at, int byId) =>
        new(kind, weight, Weight.Zero, reading, at, byId) { AnimalId = animalId };

    /// <summary>The same for an animal not saved yet.</summary>
    public static WeighIn OfAnimal(WeighInKind kind, Animal animal, Weight weight, Reading reading, DateTime at, int byId) =>
        new(kind, weight, Weight.Zero, reading, at, byId) { Animal = animal };

    /// <summary>A full lug, whose tare is taken off.</summary>
    public static WeighIn OfFilling(WeighInKind kind, Filling filling, Weight gross, Reading reading, DateTime at, int byId) =>
        new(kind, gross, filling.Tare, reading, at, byId) { Filling = filling, JobId = filling.JobId };

    /// <summary>Something of a job weighed without a lug: packs, fat, bone, discard.</summary>
    public static WeighIn OfJob(WeighInKind kind, int jobId, int? animalId, Weight gross, Weight tare, Reading reading, DateTime at, int byId) =>
        new(kind, gross, tare, reading, at, byId) { JobId = jobId, AnimalId = animalId };

    /// <summary>Finished product of a batch, or of one load of it.</summary>
    public static WeighIn OfBatch(int batchId, int? loadId, Weight gross, Weight tare, Reading reading, DateTime at, int byId) =>
        new(WeighInKind.FinishedProduct, gross, tare, reading, at, byId) { BatchId = batchId, LoadId = loadId };

    /// <summary>What of a batch stayed in grinder and stuffer.</summary>
    public static WeighIn LeftOf(int batchId, Weight weight, Reading reading, DateTime at, int byId) =>
        new(WeighInKind.LeftInMachines, weight, Weight.Zero, reading, at, byId) { BatchId = batchId };

    /// <summary>Takes this weight out of every sum. Its strike must have been loaded.</summary>
    public Finding? StrikeOut(string because, DateTime at, int byId)
    {
        if (Kind == WeighInKind.Box)
            return new Finding("", "A box's weight goes with its box. Unpack the box at the freezer.");
        if (Strike is not null)
            return new Finding("", "This weight was struck out before.");
        if (string.IsNullOrWhiteSpace(because))
            return new Finding("Because", "Say why the weight is wrong.");
        Strike = new Strike(because, at, byId);
        return null;
    }

    internal void StrikeWithBox(string because, DateTime at, int byId) => Strike ??= new Strike(because, at, byId);
}
