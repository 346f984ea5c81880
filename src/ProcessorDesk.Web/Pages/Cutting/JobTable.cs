namespace ProcessorDesk.Web.Pages.Cutting;

/// <summary>One table of the list: what it is, its jobs, and what the button says.</summary>
public sealed record JobTable(string Caption, IReadOnlyList<IndexModel.Line> Lines, string Press);
