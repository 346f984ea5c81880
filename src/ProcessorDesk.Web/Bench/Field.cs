namespace ProcessorDesk.Web.Bench;

/// <summary>One field of a calculator, as the form, the address and the documents name it.</summary>
/// <param name="Name">In the address; it never changes.</param>
/// <param name="Label">On the form.</param>
/// <param name="Form">How it is written, as the documents say it: "a plain decimal, above 0 to 100,000".</param>
public abstract record Field(string Name, string Label, string Form)
{
    /// <summary>Shown behind the figure: lb, %, °F.</summary>
    public string Unit { get; init; } = "";

    /// <summary>Says more than the label, on the form and in the documents.</summary>
    public string Hint { get; init; } = "";

    /// <summary>Taken where the field is blank; empty where nothing is.</summary>
    public string Default { get; init; } = "";

    /// <summary>Without it there is no answer.</summary>
    public bool IsRequired { get; init; } = true;

    /// <summary>May be given several times, or once with an entry a line.</summary>
    public bool Repeats { get; init; }

    /// <summary>The codes there are; empty for anything typed.</summary>
    public IReadOnlyList<Choice> Choices { get; init; } = [];

    /// <summary>It is a figure.</summary>
    public bool IsNumber { get; init; }

    /// <summary>One entry of it, as an example.</summary>
    public string Example { get; init; } = "";

    /// <summary>The value of one text; what is wrong with it otherwise.</summary>
    internal abstract object? Take(string text, out string? problem);
}

/// <summary>A field whose text stands for a value of the trade.</summary>
public sealed record Field<T>(string Name, string Label, string Form, Func<string, Taken<T>> Parse) : Field(Name, Label, Form)
{
    internal override object? Take(string text, out string? problem)
    {
        var taken = Parse(text);
        problem = taken.Problem;
        return taken.Value;
    }
}
