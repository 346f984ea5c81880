using ProcessorDesk.Records;

namespace ProcessorDesk.Seasons.Tests.Generating;

/// <summary>A full lug, and how many divisions of lean are still in it.</summary>
internal sealed class LugInHand(Filling filling, long left)
{
    public Filling Filling => filling;

    public long Left { get; set; } = left;
}
