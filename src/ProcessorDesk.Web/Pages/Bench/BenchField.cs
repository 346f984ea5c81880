using ProcessorDesk.Web.Bench;

namespace ProcessorDesk.Web.Pages.BenchPages;

/// <summary>One field of a calculator's form: what was typed in it, and what is wrong with that.</summary>
/// <param name="Typed">A line an entry.</param>
/// <param name="Problems">Null where nothing is wrong.</param>
public sealed record BenchField(Field Field, string Typed, IReadOnlyList<string>? Problems)
{
    /// <summary>Up to so many choices stand as tiles; more are a list to open.</summary>
    private const int MostTiles = 7;

    public string Id => "f-" + Field.Name;

    public bool IsTiles => Field.Choices.Count is > 0 and <= MostTiles;

    /// <summary>Whether a choice is ticked.</summary>
    public bool Has(string value) => Typed.Split('\n', StringSplitOptions.TrimEntries).Contains(value);

    public string? Css => Problems is null ? null : "bad";

    /// <summary>Ids of hint, problem and unit, for a screen reader.</summary>
    public string? DescribedBy
    {
        get
        {
            string[] ids = [.. Hint == "" ? [] : (string[])[$"{Id}-hint"], .. Problems is null ? [] : (string[])[$"{Id}-problem"], .. Field.Unit == "" || IsTiles ? [] : (string[])[$"{Id}-unit"]];
            return ids.Length == 0 ? null : string.Join(' ', ids);
        }
    }

    public string Hint => string.Join(". ", ((string[])
    [
        Field.Hint,
        Field.Repeats && !IsTiles ? $"One a line: {Field.Form.Trim('`')}, for example {Field.Example}" : "",
        Field.IsRequired || Field.Default != "" || Field.Hint.Contains("lank", StringComparison.Ordinal) ? "" : "May stay blank",
    ]).Where(words => words != ""));
}
