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

    /// <summary>A stage after others: what is less than was there is a loss by name, what is more came in by name, so that every step adds up.</summary>
    public void Come(string name, Weight weight, string loss, string gain = "More than was weighed before")
    {
        if (Steps.Count > 0)
        {
            Lose(loss, _at - weight);
            Add(gain, weight - _at);
        }

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
        if (!weight.IsPositive || Steps.Count == 0)
            return;
        Steps.Add(new WayStep(WayKind.Added, name, weight, division.Print(weight)));
        _at += weight;
    }
}
