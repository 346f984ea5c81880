namespace ProcessorDesk.Web.Bench;

/// <summary>What became of the text in a field: a value, or words that say what to type instead.</summary>
/// <param name="Value">Only where there is no problem.</param>
/// <param name="Problem">Null where the value is good.</param>
public readonly record struct Taken<T>(T Value, string? Problem)
{
    public static Taken<T> Good(T value) => new(value, null);

    public static Taken<T> Bad(string problem) => new(default!, problem);

    /// <summary>What was parsed by the trade.</summary>
    public static Taken<TStruct> Of<TStruct>(Parsed<TStruct> parsed)
        where TStruct : struct => parsed.Try(out var value, out var problem) ? new(value, null) : new(default, problem);

    /// <summary>Goes on with a good value.</summary>
    public Taken<TNext> Then<TNext>(Func<T, Taken<TNext>> next) => Problem is null ? next(Value) : Taken<TNext>.Bad(Problem);
}
