using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;

namespace ProcessorDesk.SeedDemo;

/// <summary>From the first knife to the agreed split.</summary>
internal sealed partial class DemoJob
{
    /// <summary>The whole cutting of a job: the ticks, each lug's net lean, each kind of cut as packed, bone and discard, and the end.</summary>
    public DemoJob Cut(int daysAgo, int hour, decimal[] lean, (string Name, decimal Pounds)[]? cuts = null, decimal bone = 0m, decimal discard = 0m)
    {
        StartCutting(daysAgo, hour, 0).Tick(daysAgo, hour, 5);
        for (var i = 0; i < lean.Length; i++)
            Lean(daysAgo, hour, 20 + (5 * i), lean[i]);
        foreach (var (name, pounds) in cuts ?? [])
            Loose(daysAgo, hour, 45, WeighInKind.CutPack, pounds, name, (int)pounds);
        if (bone > 0m)
            Loose(daysAgo, hour, 50, WeighInKind.Bone, bone);
        if (discard > 0m)
            Loose(daysAgo, hour, 52, WeighInKind.Discard, discard, "sinew, fat and bloodshot");
        return FinishCutting(daysAgo, hour, 55);
    }

    public DemoJob StartCutting(int daysAgo, int hour, int minute) => Do(daysAgo, hour, minute, "start cutting", "OT", "Cutting", act =>
        Records.StoppingKnife(_jobId) is { Count: > 0 } stopping ? Outcome.Refused(stopping) : Told(Job().StartCutting(act.Now)));

    /// <summary>Everything on the cutter's list, looked to on every animal.</summary>
    public DemoJob Tick(int daysAgo, int hour, int minute) => Do(daysAgo, hour, minute, "tick the checklist", "OT", "Cutting", act =>
    {
        foreach (var animal in Animals())
            Records.ChecklistTicks.AddRange(CutMenu.Checklist.Select(item => new ChecklistTick(animal, item.Code, act.Now, act.Hand.Id)));
        return Outcome.Done(_jobId);
    });

    /// <summary>Net lean into the next free lug; its animal by place, all of them where the place is null.</summary>
    public DemoJob Lean(int daysAgo, int hour, int minute, decimal net, int? animal = null) => Do(daysAgo, hour, minute, "weigh at the table", "OT", "Cutting", act =>
    {
        var animals = Animals();
        var lug = Records.Lugs.AsNoTracking().OrderBy(one => one.Number).First(one => !Records.Fillings.Open().Any(filling => filling.LugId == one.Id));
        return Records.WeighAtTable(
            new TableWeighing(
                _jobId, WeighInKind.LeanTrim, lug.Id, animal is { } place ? [animals[place]] : animals, Weight.FromPounds(net) + lug.Tare, lug.Tare, new Reading("bench", s_bench)), act);
    });

    public DemoJob Loose(int daysAgo, int hour, int minute, WeighInKind kind, decimal pounds, string? note = null, int? packs = null) =>
        Do(daysAgo, hour, minute, "weigh at the table", "FA", "Cutting", act => Records.WeighAtTable(
            new TableWeighing(_jobId, kind, null, Animals() is [var only] ? [only] : [], Weight.FromPounds(pounds), Weight.Zero, new Reading("bench", s_bench, note, packs)), act));

    public DemoJob StrikeLast(int daysAgo, int hour, int minute, string because) => Do(daysAgo, hour, minute, "strike out a weight", "OT", "Cutting", act =>
        Told(Records.WeighIns.Include(one => one.Strike).Where(one => one.JobId == _jobId).OrderBy(one => one.Id).Last().StrikeOut(because, act.Now, act.Hand.Id)));

    public DemoJob FinishCutting(int daysAgo, int hour, int minute) =>
        Do(daysAgo, hour, minute, "finish cutting", "OT", "Cutting", act => Told(Job().FinishCutting(act.Now)));

    public DemoJob Agree(int daysAgo, int hour, int minute) =>
        Do(daysAgo, hour, minute, "agree the split", "FA", "Grind", act => Records.AgreeSplit(_jobId, Records.LeanOf(_jobId, s_bench), act));
}
