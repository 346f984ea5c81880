using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>The measured lean divided over the asks, agreed by a hand. At most one stands for a job.</summary>
public sealed class AgreedSplit
{
    private readonly List<GrindAllotment> _allotments = [];

    private AgreedSplit()
    {
    }

    public AgreedSplit(int jobId, Weight lean, DateTime agreedAt, int agreedById, IEnumerable<GrindAllotment> allotments)
    {
        JobId = jobId;
        Lean = lean;
        AgreedAt = agreedAt;
        AgreedById = agreedById;
        _allotments.AddRange(allotments);
        var sum = _allotments.Aggregate(Weight.Zero, (total, one) => total + one.Lean);
        if (sum != lean)
            throw new ArgumentException($"The allotments sum to {sum}, the lean is {lean}.", nameof(allotments));
    }

    public int Id { get; private set; }

    public int JobId { get; private set; }

    public Weight Lean { get; private set; }

    public DateTime AgreedAt { get; private set; }

    public int AgreedById { get; private set; }

    public DateTime? WithdrawnAt { get; private set; }

    public int? WithdrawnById { get; private set; }

    public string? WithdrawnBecause { get; private set; }

    public IReadOnlyCollection<GrindAllotment> Allotments => _allotments;

    public void Withdraw(DateTime at, int byId, string because)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(because);
        if (WithdrawnAt is not null)
            throw new InvalidOperationException("This split was withdrawn before.");
        (WithdrawnAt, WithdrawnById, WithdrawnBecause) = (at, byId, because.Trim());
    }
}
