using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Process;

namespace ProcessorDesk.Records;

/// <summary>What a batch's record needs and lacks for its release.</summary>
public static class RecordNeeds
{
    /// <summary>Empty where the record is complete for the way the product is made. The batch must have been loaded with its loads and rules.</summary>
    /// <param name="division">Of the bench scale.</param>
    public static IReadOnlyList<Finding> MissingFrom(this Batch batch, BatchLines lines, IReadOnlyList<DispositionLine> dispositions, ScaleDivision division)
    {
        var needs = batch.Product.Needs();
        return
        [
            .. batch.Loads.OrderBy(load => load.Number).SelectMany(load => MissingFrom(batch, load)),
            .. batch.VerdictsOn(lines, division).Refusals(lines, dispositions),
            .. needs.HasFlag(ProcessNeeds.WrittenSupport) && batch.WrittenSupport is null ? [NotNamed(batch.Product)] : Array.Empty<Finding>(),
            .. Unweighed(batch, lines),
        ];
    }

    /// <summary>What its record says of what it is held to. The batch must have been loaded with its loads and rules.</summary>
    public static ProcessVerdicts VerdictsOn(this Batch batch, BatchLines lines, ScaleDivision division) =>
        ProcessVerdicts.Of(batch.Product.Needs(), batch.RulesInForce, lines, BatchBalance.Of(batch, lines, division));

    /// <summary>What a batch of the product needs before it is released.</summary>
    public static ProcessNeeds Needs(this Product product) => product.ProcessKind.ToTrade().NeedsOf(product.Cured);

    public static WayOfMaking ToTrade(this ProcessKind kind) => kind switch
    {
        ProcessKind.Fresh => WayOfMaking.Fresh,
        ProcessKind.CuredRaw => WayOfMaking.CuredRaw,
        ProcessKind.Smoked => WayOfMaking.Smoked,
        ProcessKind.Cooked => WayOfMaking.Cooked,
        ProcessKind.Fermented => WayOfMaking.Fermented,
        ProcessKind.Dried => WayOfMaking.Dried,
    };

    private static IEnumerable<Finding> MissingFrom(Batch batch, Load load)
    {
        if (load.MixedAt is null)
            return batch.MixedAt is null ? [new Finding("", $"Load {load.Number} is not mixed.")] : [];
        return load.StricterCure(load.WeighedBlock, load.Ingredients) is { Meets: false } check
            ? check.Findings.Select(finding => finding with { Field = "", Text = $"Load {load.Number}: {finding.Text}" })
            : [];
    }

    private static Finding NotNamed(Product product) => new(
        "WrittenSupport",
        $"{Wording.Of(product.ProcessKind)} product is outside the published tables. The manager names the shop's own written, validated process.",
        "", "", product.ProcessKind.ToTrade().Source);

    private static IEnumerable<Finding> Unweighed(Batch batch, BatchLines lines)
    {
        var weighed = lines.Finished.Select(one => one.LoadId).ToHashSet();
        return weighed.Count == 0 ? [new Finding("", "The finished weight is not there. Weigh it.")]
            : weighed.Contains(null) ? []
            : batch.Loads.Where(load => load.MixedAt is not null && !weighed.Contains(load.Id)).OrderBy(load => load.Number)
                .Select(load => new Finding("", $"The finished weight of load {load.Number} is not there. Weigh it."));
    }
}
