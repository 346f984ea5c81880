namespace ProcessorDesk.Records;

/// <summary>The next number of a series.</summary>
public sealed class Counter
{
    private Counter()
    {
    }

    public Counter(string name, long next) => (Name, Next) = (name, next);

    public string Name { get; private set; } = "";

    public long Next { get; private set; }
}
