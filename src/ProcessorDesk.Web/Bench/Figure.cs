namespace ProcessorDesk.Web.Bench;

/// <summary>One figure of an answer, as JSON and the documents name it.</summary>
/// <param name="Name">In JSON, with its unit; it never changes.</param>
/// <param name="Label">On the page.</param>
/// <param name="Kind">What stands in JSON.</param>
/// <param name="About">What it is, for the documents.</param>
public sealed record Figure(string Name, string Label, FigureKind Kind, string About = "")
{
    /// <summary>Shown behind a figure.</summary>
    public string Unit { get; init; } = "";

    /// <summary>Null where there is none.</summary>
    public bool MayBeNull { get; init; }

    /// <summary>The page says it in its first line, and not again among the figures.</summary>
    public bool IsHeadline { get; init; }

    /// <summary>The columns of rows.</summary>
    public IReadOnlyList<Figure> Columns { get; init; } = [];

    public static Figure Pounds(string name, string label, string about = "") => new(name, label, FigureKind.Number, about) { Unit = "lb" };

    public static Figure Number(string name, string label, string unit, string about = "") => new(name, label, FigureKind.Number, about) { Unit = unit };

    public static Figure Text(string name, string label, string about = "") => new(name, label, FigureKind.Text, about);

    /// <summary>Who published the figures.</summary>
    public static Figure Source { get; } = Text("source", "Source", "who published the figures used");

    /// <summary>What a rule has to say, a row each.</summary>
    public static Figure Findings { get; } = new("findings", "Findings", FigureKind.Rows, "what a person should know or do, with what was found and what is allowed; empty where there is nothing")
    {
        Columns = [Text("field", "Field"), Text("text", "What to do"), Text("found", "Found"), Text("allowed", "Allowed"), Text("source", "Source")],
    };
}
