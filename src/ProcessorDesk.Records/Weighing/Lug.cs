using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>A numbered tote with a checked tare; reused. See <see cref="Filling"/>.</summary>
public sealed class Lug : IVersioned
{
    private Lug()
    {
    }

    public Lug(int number, Weight tare, DateTime tareCheckedAt)
    {
        Number = number;
        CheckTare(tare, tareCheckedAt);
    }

    public int Id { get; private set; }

    public int Number { get; private set; }

    public Weight Tare { get; private set; }

    public DateTime TareCheckedAt { get; private set; }

    public DateTime? RetiredAt { get; private set; }

    public int Version { get; private set; }

    public void CheckTare(Weight tare, DateTime at)
    {
        if (tare.IsNegative)
            throw new ArgumentOutOfRangeException(nameof(tare), "A tare is zero or more.");
        (Tare, TareCheckedAt) = (tare, at);
    }

    public void Retire(DateTime at) => RetiredAt ??= at;

    public void BringBack() => RetiredAt = null;
}
