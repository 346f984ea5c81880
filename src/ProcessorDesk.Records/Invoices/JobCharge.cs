using ProcessorDesk.Trade.Pricing;

namespace ProcessorDesk.Records;

/// <summary>One charge of a job and what it is for.</summary>
/// <param name="OfId">The animal's or the allotment's id; null for what is charged as often as one likes, or only foretold.</param>
public sealed record JobCharge(PriceFor For, int? OfId, ChargeLine Line);
