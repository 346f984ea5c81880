using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>
/// One run of one product at one version of its formula: one owner's meat, or that of several who agreed to pooling. Its state
/// is its facts; see <see cref="Stage"/>.
/// </summary>
public sealed class Batch
{
    private readonly List<BatchEntry> _entries = [];
    private readonly List<Load> _loads = [];

    private Batch()
    {
    }

    public Batch(int number, FormulaVersion formula, Pooling pooling, DateTime plannedAt, int plannedById)
    {
        Number = number;
        ProductId = formula.ProductId;
        FormulaVersionId = formula.Id;
        Pooling = pooling;
        PlannedAt = plannedAt;
        PlannedById = plannedById;
    }

    public int Id { get; private set; }

    /// <summary>The number people say; a series without gaps.</summary>
    public int Number { get; private set; }

    public int ProductId { get; private set; }

    public Product Product { get; private set; } = null!;

    public int FormulaVersionId { get; private set; }

    public FormulaVersion FormulaVersion { get; private set; } = null!;

    public Pooling Pooling { get; private set; }

    public DateTime PlannedAt { get; private set; }

    public int PlannedById { get; private set; }

    /// <summary>When the last load was mixed; the cure's rest counts from here.</summary>
    public DateTime? MixedAt { get; private set; }

    public DateTime? ReleasedAt { get; private set; }

    public int? ReleasedById { get; private set; }

    /// <summary>
    /// For what the published tables do not reach: the shop's own written and validated process, named by the manager. Null
    /// where none was named.
    /// </summary>
    public string? WrittenSupport { get; private set; }

    /// <summary>Its stages in the smokehouse as the shop writes them, a line each; null where there are none.</summary>
    public string? Programme { get; private set; }

    /// <summary>What its record is held against; null before it is mixed, and for batches older than the shop's own rules. See <see cref="RulesInForce"/>.</summary>
    public BatchRules? Rules { get; private set; }

    /// <summary>The rules must have been loaded.</summary>
    public BatchRules RulesInForce => Rules ?? BatchRules.Published;

    /// <summary>Taken off the plan before any meat was in, or thrown out after; no further fact follows.</summary>
    public DateTime? EndedAt { get; private set; }

    public int? EndedById { get; private set; }

    public string? EndedBecause { get; private set; }

    public IReadOnlyCollection<BatchEntry> Entries => _entries;

    public IReadOnlyCollection<Load> Loads => _loads;

    public BatchStage Stage => StageOf(MixedAt, ReleasedAt, EndedAt);

    /// <summary>The stage from the facts alone, for lists that read columns.</summary>
    public static BatchStage StageOf(DateTime? mixedAt, DateTime? releasedAt, DateTime? endedAt) => (mixedAt, releasedAt, endedAt) switch
    {
        (_, _, not null) => BatchStage.Ended,
        (_, not null, _) => BatchStage.Released,
        (not null, _, _) => BatchStage.Mixed,
        _ => BatchStage.Planned,
    };

    internal void Take(IEnumerable<BatchEntry> entries, IEnumerable<Load> loads)
    {
        _entries.AddRange(entries);
        _loads.AddRange(loads);
    }

    internal void Mixed(BatchRules rules, DateTime at)
    {
        MixedAt ??= at;
        Rules ??= rules;
    }

    internal void Run(string? programme) => Programme = Texts.OrNull(programme);

    internal void SupportBy(string words) => WrittenSupport = words.Trim();

    internal void Release(DateTime at, int byId) => (ReleasedAt, ReleasedById) = (at, byId);

    internal void End(DateTime at, int byId, string because) => (EndedAt, EndedById, EndedBecause) = (at, byId, because.Trim());
}
