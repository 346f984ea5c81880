namespace ProcessorDesk.Paper;

/// <summary>One kind of thing in a box: "Ring sausage", "12 packs".</summary>
public sealed record ContentLine(string What, string Count)
{
    internal string Words => Count.Length > 0 ? $"{What}, {Count}" : What;
}
