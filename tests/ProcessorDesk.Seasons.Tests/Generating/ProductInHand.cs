using ProcessorDesk.Records;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Seasons.Tests.Generating;

/// <summary>What one job gets of one product, on its way through the kitchen.</summary>
internal sealed class ProductInHand(JobInHand job, GrindAllotment allotment, FormulaVersion formula)
{
    public JobInHand Job => job;

    public GrindAllotment Allotment => allotment;

    public FormulaVersion Formula => formula;

    /// <summary>What came back; null before the release.</summary>
    public Weight? Finished { get; set; }
}
