using System.Diagnostics.CodeAnalysis;

namespace ProcessorDesk.Trade;

/// <summary>What became of something a person typed: a value, or words that say what to type instead.</summary>
public sealed class Parsed<T>
    where T : struct
{
    private readonly T _value;

    private Parsed(T value, string? problem) => (_value, Problem) = (value, problem);

    /// <summary>What is wrong and what to do, for the person; null where the value is good.</summary>
    public string? Problem { get; }

    public bool IsGood => Problem is null;

    /// <exception cref="InvalidOperationException">There is no value.</exception>
    public T Result => IsGood ? _value : throw new InvalidOperationException(Problem);

    public bool Try(out T value, [NotNullWhen(false)] out string? problem)
    {
        (value, problem) = (_value, Problem);
        return IsGood;
    }

    internal static Parsed<T> Good(T value) => new(value, null);

    internal static Parsed<T> Bad(string problem) => new(default, problem);
}
