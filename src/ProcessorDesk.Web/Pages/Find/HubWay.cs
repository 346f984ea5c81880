using ProcessorDesk.Records;

namespace ProcessorDesk.Web.Pages.Find;

/// <summary>The way of a job through the shop, as its hub tells it.</summary>
internal static class HubWay
{
    /// <summary>What happened and when, the newest first.</summary>
    public static IEnumerable<(string What, DateTime At)> Of(JobHub hub)
    {
        var job = hub.Job;
        (string What, DateTime? At)[] steps =
        [
            ("Everything in boxes", job.BoxedAt),
            ("Everything made", job.MadeAt),
            ($"Split agreed by {hub.Money.Agreed?.By}", hub.Money.Agreed?.At),
            ("Cutting finished, trim weighed", job.CuttingDoneAt),
            ("Cutting started", job.CuttingStartedAt),
            ($"Taken in by {hub.TakenBy}", job.TakenAt),
        ];
        return LastOf(hub).Concat(HandOvers(hub)).Concat(steps.Where(step => step.At is not null).Select(step => (step.What, step.At!.Value)))
            .OrderByDescending(step => step.Item2);
    }

    /// <summary>Each hand-over with what it took, boxes before parts.</summary>
    private static IEnumerable<(string What, DateTime At)> HandOvers(JobHub hub)
    {
        var boxes = hub.Boxes.Where(box => box.LeftAt is not null).Select(box => (What: $"box {box.Box.Number}", To: box.To!, At: box.LeftAt!.Value));
        var parts = hub.Animals.SelectMany(animal => animal.Parts).Select(one => one.Part).Where(part => part.GivenAt is not null)
            .Select(part => (What: Wording.Of(part.Kind).ToLowerInvariant(), To: part.GivenTo!, At: part.GivenAt!.Value));
        return boxes.Concat(parts).GroupBy(one => (one.At, one.To)).Select(one => ($"Handed over to {one.Key.To}: {string.Join(", ", one.Select(thing => thing.What))}", one.Key.At));
    }

    /// <summary>What left without a box or a part of its own that says so.</summary>
    private static IEnumerable<(string What, DateTime At)> LastOf(JobHub hub) =>
        hub.Job.HandedOverAt is { } at && HandOvers(hub).All(one => one.At != at) ? [($"Handed over to {hub.Job.HandedOverTo}", at)] : [];
}
