using ProcessorDesk.Web.Bench;

namespace ProcessorDesk.Web.Pages.BenchPages;

/// <summary>A table of an answer.</summary>
public sealed record AnswerRows(Figure Figure, IEnumerable<IReadOnlyDictionary<string, object?>> Rows);
