using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>What a batch's record lacks for its release.</summary>
public static class RecordNeeds
{
    /// <summary>Empty where the record is complete for the way the product is made. Batch with product, loads, draws and ingredients must have been loaded.</summary>
    public static IReadOnlyList<Finding> MissingFrom(this RecordsContext records, Batch batch)
    {
        var findings = new List<Finding>();
        foreach (var load in batch.Loads.OrderBy(load => load.Number))
        {
            if (load.MixedAt is null)
                findings.Add(new Finding("", $"Load {load.Number} is not mixed."));
            else if (load.CureOf(load.WeighedBlock, load.Ingredients) is { Meets: false } check)
                findings.AddRange(check.Findings.Select(finding => finding with { Text = $"Load {load.Number}: {finding.Text}" }));
        }

        var weighed = records.WeighIns.AsNoTracking().Standing().Where(one => one.BatchId == batch.Id).Select(one => one.LoadId).ToList();
        if (weighed.Count == 0)
            findings.Add(new Finding("", "The finished weight is not there. Weigh it."));
        else if (!weighed.Contains(null))
            findings.AddRange(batch.Loads.Where(load => !weighed.Contains(load.Id)).Select(load => new Finding("", $"The finished weight of load {load.Number} is not there. Weigh it.")));
        return findings;
    }
}
