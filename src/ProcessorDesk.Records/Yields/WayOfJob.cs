using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Yields;

namespace ProcessorDesk.Records;

/// <summary>The way of a job's weight, step by step; what a stage lacks of what was there is a loss with a name.</summary>
internal sealed class WayOfJob(ScaleDivision division)
{
    private Weight _at;

    public List<WayStep> Steps { get; } = [];

    public void Stage(string name, Weight weight)
    {
        Steps.Add(new WayStep(WayKind.Stage, name, weight, division.Print(weight)));
        _at = weight;
    }

    /// <summary>A stage that must not be more than what was there; the difference is the named loss.</summary>
    public void DownTo(string name, Weight weight, string loss)
    {
        if (Steps.Count > 0 && _at > weight)
            Lose(loss, _at - weight);
        Stage(name, weight);
    }

    public void Lose(string name, Weight weight)
    {
        if (!weight.IsPositive || Steps.Count == 0)
            return;
        Steps.Add(new WayStep(WayKind.Loss, name, weight, division.Print(weight)));
        _at -= weight;
    }

    public void Add(string name, Weight weight)
    {
        if (!weight.IsPositive)
            return;
        Steps.Add(new WayStep(WayKind.Added, name, weight, division.Print(weight)));
        _at += weight;
    }
}
