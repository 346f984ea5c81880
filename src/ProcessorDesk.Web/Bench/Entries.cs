using Microsoft.Extensions.Primitives;

namespace ProcessorDesk.Web.Bench;

/// <summary>What was given to a calculator: the values of its fields, and what is wrong with them, field by field.</summary>
public sealed class Entries
{
    /// <summary>Entries of a repeated field that are taken.</summary>
    public const int MostEntries = 2000;

    /// <summary>Bytes of an address that are taken, fields and all.</summary>
    public const int LongestAddress = 64 * 1024;

    private readonly Dictionary<string, IReadOnlyList<object?>> _values = [];
    private readonly Dictionary<string, string> _typed = [];
    private readonly Dictionary<string, List<string>> _problems = [];

    private Entries(bool isBlank) => IsBlank = isBlank;

    /// <summary>None of the fields was given at all: the page was only opened.</summary>
    public bool IsBlank { get; }

    /// <summary>Words beside each field that can't be taken; empty where all can.</summary>
    public IReadOnlyDictionary<string, List<string>> Problems => _problems;

    /// <summary>Reads a query. A name that is none of the fields is passed over.</summary>
    public static Entries Read(IReadOnlyList<Field> fields, IQueryCollection query)
    {
        var entries = new Entries(!fields.Any(field => query.ContainsKey(field.Name)));
        foreach (var field in fields)
            entries.Read(field, query[field.Name]);
        return entries;
    }

    /// <summary>The text as it was typed, a line an entry; where that is nothing, what is taken unasked.</summary>
    public string Typed(Field field) => _typed[field.Name] is { Length: > 0 } typed ? typed : field.Default;

    /// <summary>The value of a field that is required or has a default.</summary>
    public T Of<T>(Field<T> field) => (T)_values[field.Name].Single()!;

    /// <summary>The value of a field that may be left blank.</summary>
    public T? Maybe<T>(Field<T> field)
        where T : struct => _values[field.Name] is [T value] ? value : null;

    /// <summary>The values of a repeated field, in order.</summary>
    public IReadOnlyList<T> AllOf<T>(Field<T> field) => [.. _values[field.Name].Cast<T>()];

    private void Read(Field field, StringValues given)
    {
        List<string> texts = [.. field.Repeats
            ? given.SelectMany(one => (one ?? "").Split(["\r\n", "\n", "\r"], StringSplitOptions.None))
            : given.Select(one => one ?? "")];
        _typed[field.Name] = string.Join('\n', texts);
        texts = [.. texts.Select(one => one.Trim()).Where(one => one.Length > 0)];
        if (texts.Count == 0 && field.Default.Length > 0)
            texts.Add(field.Default);
        _values[field.Name] = [];
        if (texts.Count == 0 && field.IsRequired)
            Add(field.Name, Missing(field));
        else if (texts.Count > 1 && !field.Repeats)
            Add(field.Name, "Give it once.");
        else if (texts.Count > MostEntries)
            Add(field.Name, FormattableString.Invariant($"No more than {MostEntries:#,0} entries can be taken."));
        else
            _values[field.Name] = [.. texts.Select((text, place) => Take(field, text, place))];
    }

    private object? Take(Field field, string text, int place)
    {
        var value = field.Take(text, out var problem);
        if (problem is not null)
            Add(field.Name, field.Repeats ? FormattableString.Invariant($"Entry {place + 1}: {problem}") : problem);
        return value;
    }

    private void Add(string field, string problem)
    {
        if (!_problems.TryGetValue(field, out var problems))
            _problems[field] = problems = [];
        problems.Add(problem);
    }

    private static string Missing(Field field) => field switch
    {
        { Choices.Count: > 0 } => $"Choose one: {string.Join(", ", field.Choices.Select(choice => choice.Value))}.",
        { Repeats: true } => $"Give one or more, for example {field.Example}.",
        { IsNumber: true } => $"Give a figure, for example {field.Example}.",
        _ => $"Give {field.Form}, for example {field.Example}.",
    };
}
