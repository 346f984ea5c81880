namespace ProcessorDesk.Records;

/// <summary>What becomes of one muscle group. Group and cut are codes of <see cref="CutMenu"/>.</summary>
public sealed class CutOrderLine
{
    private CutOrderLine()
    {
    }

    public CutOrderLine(int position, string group, string cut, string? detail, int? perPack)
    {
        Position = position;
        Group = group;
        Cut = cut;
        Detail = Texts.OrNull(detail);
        PerPack = perPack;
    }

    public int JobId { get; private set; }

    public int Position { get; private set; }

    public string Group { get; private set; } = "";

    public string Cut { get; private set; } = "";

    /// <summary>Thickness, weight or a wish, as people say it: "3/4 in", "3 lb, tied".</summary>
    public string? Detail { get; private set; }

    public int? PerPack { get; private set; }
}
