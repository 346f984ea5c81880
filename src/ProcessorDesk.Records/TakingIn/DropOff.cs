using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>Everything of a drop-off.</summary>
/// <param name="Order">Null where there is none yet.</param>
/// <param name="IsWhole">False for "ticket now, details after".</param>
public sealed record DropOff(
    TakenOwner Owner,
    IReadOnlyList<JobPerson> People,
    IReadOnlyList<TakenAnimal> Animals,
    TakenOrder? Order,
    Money Deposit,
    PaymentMethod Method,
    bool IsWhole = true);
