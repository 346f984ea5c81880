using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>Why meat may not go into a load.</summary>
internal static class DrawRefusals
{
    public static List<Finding> Of(RecordsContext records, Load load, Filling filling, IReadOnlyList<int> entries, DrawOrder order, ShopSettings shop)
    {
        List<Finding> findings = [.. records.StoppingBatch(load.BatchId, HeldAct.Batch)];
        if (load.MixedAt is not null)
            findings.Add(new Finding("", $"Load {load.Number} is mixed already. Draw into another load."));
        if (entries.Count == 0)
            findings.Add(new Finding("Lug", $"Lug {filling.Lug.Number} is another owner's: nothing of job {filling.Job.Number} is planned for this batch. Set it aside."));
        else if (!load.Parts.Any(part => entries.Contains(part.EntryId)))
            findings.Add(new Finding("Lug", $"Nothing of job {filling.Job.Number} is planned for load {load.Number}; it belongs into load {LoadsOf(records, entries)}."));
        findings.AddRange(records.Stopping(filling.JobId, HeldAct.Batch).Select(finding => finding with { Field = "Lug" }));
        if (filling.EmptiedAt is not null && !records.WasEmptiedByMistake(filling))
            findings.Add(new Finding("Lug", $"Lug {filling.Lug.Number} was emptied before. Look at its number again."));
        else if (TooMuch(records, filling, order.Weighed, shop) is { } tooMuch)
            findings.Add(tooMuch);
        return findings;
    }

    /// <summary>Two scales differ by a little, so a little more than was weighed in is no reason to ask.</summary>
    private static Finding? TooMuch(RecordsContext records, Filling filling, Weight weighed, ShopSettings shop)
    {
        var division = shop.BenchDivision;
        var lean = records.LeanIn(filling.Id, division);
        var left = records.LeftIn(filling.Id, division);
        return division.CountOf(weighed) > division.CountOf(left + shop.Tolerance.ToRatio().Times(lean))
            ? new Finding("Weighed", $"Lug {filling.Lug.Number} holds {division.Print(left)} by its weigh-in, and {division.Print(weighed)} is more. Weigh again, and look at the lug's number.", division.Print(weighed), division.Print(left))
            : null;
    }

    private static string LoadsOf(RecordsContext records, IReadOnlyList<int> entries) => string.Join(" or ", records.LoadParts
        .Where(part => entries.Contains(part.EntryId))
        .Join(records.Loads, part => part.LoadId, load => load.Id, (_, load) => load.Number)
        .Distinct().Order());
}
