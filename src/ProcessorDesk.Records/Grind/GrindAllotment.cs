using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;

namespace ProcessorDesk.Records;

/// <summary>What an agreed split gives one ask, at one version of its product's formula.</summary>
public sealed class GrindAllotment
{
    private GrindAllotment()
    {
    }

    public GrindAllotment(int position, int productId, int formulaVersionId, Allotment given)
    {
        Position = position;
        ProductId = productId;
        FormulaVersionId = formulaVersionId;
        Lean = given.Lean;
        AddedFat = given.AddedFat;
        MeatBlock = given.MeatBlock;
        Green = given.Green;
        Finished = given.Finished;
        FinishedLow = given.FinishedLow;
        FinishedHigh = given.FinishedHigh;
        Reasons = string.Join('\n', given.Reasons);
    }

    public int Id { get; private set; }

    public int AgreedSplitId { get; private set; }

    public int Position { get; private set; }

    public int ProductId { get; private set; }

    public Product Product { get; private set; } = null!;

    public int FormulaVersionId { get; private set; }

    public FormulaVersion FormulaVersion { get; private set; } = null!;

    public Weight Lean { get; private set; }

    public Weight AddedFat { get; private set; }

    public Weight MeatBlock { get; private set; }

    public Weight Green { get; private set; }

    public Weight Finished { get; private set; }

    public Weight FinishedLow { get; private set; }

    public Weight FinishedHigh { get; private set; }

    /// <summary>Why it is not what was asked; one sentence a line, empty where it is.</summary>
    public string Reasons { get; private set; } = "";
}
