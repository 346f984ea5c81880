namespace ProcessorDesk.Web.Bench;

/// <summary>What a figure is in JSON.</summary>
public enum FigureKind
{
    Number,
    Text,

    /// <summary>True or false.</summary>
    Flag,

    /// <summary>A list of sentences.</summary>
    Texts,

    /// <summary>A list of objects.</summary>
    Rows,
}
