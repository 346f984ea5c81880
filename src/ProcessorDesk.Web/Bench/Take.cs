namespace ProcessorDesk.Web.Bench;

/// <summary>Makes what became of the text in a field.</summary>
public static class Take
{
    public static Taken<T> Good<T>(T value) => new(value, null);

    public static Taken<T> Bad<T>(string problem) => new(default!, problem);

    /// <summary>What was parsed by the trade.</summary>
    public static Taken<T> Of<T>(Parsed<T> parsed)
        where T : struct => parsed.Try(out var value, out var problem) ? new(value, null) : new(default, problem);
}
