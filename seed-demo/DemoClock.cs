namespace ProcessorDesk.SeedDemo;

/// <summary>The clock the season is played on: it shows whatever moment is being played.</summary>
internal sealed class DemoClock : TimeProvider
{
    public DateTimeOffset Shows { get; set; }

    public override DateTimeOffset GetUtcNow() => Shows;
}
