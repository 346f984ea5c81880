namespace ProcessorDesk.Paper;

/// <summary>Readings to be written by hand: the time, then a column each, then the initials.</summary>
/// <param name="Heading">"Smoking and cooking".</param>
/// <param name="Target">What is to be reached, and whose figure it is; may be empty.</param>
/// <param name="Columns">What is read, with its unit: "Probe 1, °F".</param>
/// <param name="Lines">Empty lines to write on.</param>
public sealed record BatchLog(string Heading, string Target, IReadOnlyList<string> Columns, int Lines)
{
    /// <summary>With the lines of a log of chilling it stands on one page, the finished weight too.</summary>
    public static BatchLog Cooking(string target, int lines = 11) => new("Smoking and cooking", target, ["Probe 1, °F", "Probe 2, °F", "Chamber, °F"], lines);

    public static BatchLog Chilling(string target, int lines = 6) => new("Chilling", target, ["Probe 1, °F", "Probe 2, °F", "Room, °F"], lines);

    public static BatchLog Fermenting(string target, int lines = 10) => new("Fermenting", target, ["Acidity, pH", "Product, °F", "Chamber, °F"], lines);
}
