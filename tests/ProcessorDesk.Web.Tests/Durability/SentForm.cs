using ProcessorDesk.Web.Tests.Harness;

namespace ProcessorDesk.Web.Tests.Durability;

/// <summary>One form in a client's own ledger: what was typed, and what the shop answered.</summary>
internal abstract class SentForm(string key, int by)
{
    public string Key => key;

    /// <summary>The hand that sent it.</summary>
    public int By => by;

    /// <summary>Where the shop led to when it said that it has saved; null as long as it has not said so.</summary>
    public string? Answer { get; set; }

    /// <summary>The act as the journal names it.</summary>
    public abstract string Verb { get; }

    /// <summary>Where a save with this result leads to.</summary>
    public abstract string LeadsTo(string result);

    /// <summary>Finds what was typed, whole and as it was typed, and names every row that belongs to it.</summary>
    public abstract IEnumerable<string> RowsIn(Books books, string result);

    public static string KeyOf(Screen page, string button) =>
        ((AngleSharp.Html.Dom.IHtmlInputElement)page.Form(button).Elements.First(field => field.GetAttribute("name") == "FormKey")).Value;
}
