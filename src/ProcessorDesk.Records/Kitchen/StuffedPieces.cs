namespace ProcessorDesk.Records;

/// <summary>How many pieces a load was stuffed into, counted with the step. Never changed; it falls with the step when that is undone.</summary>
public sealed class StuffedPieces
{
    private StuffedPieces()
    {
    }

    internal StuffedPieces(BatchStep step, int loadId, int pieces) => (Step, LoadId, Pieces) = (step, loadId, pieces);

    public int StepId { get; private set; }

    public BatchStep Step { get; private set; } = null!;

    public int LoadId { get; private set; }

    public int Pieces { get; private set; }
}
