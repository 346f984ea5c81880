namespace ProcessorDesk.Records;

/// <summary>A whole that people edit: its version goes up with every save, and a form carries the version it was shown.</summary>
public interface IVersioned
{
    int Version { get; }
}
