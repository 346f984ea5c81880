namespace ProcessorDesk.Web.Bench;

/// <summary>What became of the text in a field: a value, or words that say what to type instead.</summary>
/// <param name="Value">Only where there is no problem.</param>
/// <param name="Problem">Null where the value is good.</param>
public readonly record struct Taken<T>(T Value, string? Problem)
{
    /// <summary>Goes on with a good value.</summary>
    public Taken<TNext> Then<TNext>(Func<T, Taken<TNext>> next) => Problem is null ? next(Value) : Take.Bad<TNext>(Problem);
}
