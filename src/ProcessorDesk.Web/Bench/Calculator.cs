namespace ProcessorDesk.Web.Bench;

/// <summary>One calculator of the bench. Its fields and figures are the one table that the form, the JSON, the OpenAPI document and docs/bench.md are made from.</summary>
/// <param name="Path">Last part of its address: "yield" for /bench/yield. It never changes.</param>
/// <param name="Title">As its page is headed.</param>
/// <param name="Intro">What it answers, in a sentence or two.</param>
/// <param name="Fields">In the order of the form.</param>
/// <param name="Figures">In the order of the answer.</param>
/// <param name="Cautions">What stands under every answer.</param>
/// <param name="Example">A query that has an answer.</param>
/// <param name="Work">Works the answer out with the functions of the trade; it holds no arithmetic of the trade itself.</param>
public sealed record Calculator(
    string Path, string Title, string Intro, IReadOnlyList<Field> Fields, IReadOnlyList<Figure> Figures,
    IReadOnlyList<string> Cautions, string Example, Func<Entries, Outcome> Work)
{
    /// <summary>"/bench/yield".</summary>
    public string Address => BenchList.Root + "/" + Path;

    /// <summary>Its answer is as wide as the page.</summary>
    public bool HasTable => Figures.Any(figure => figure.Kind == FigureKind.Rows && figure != Figure.Findings);
}
