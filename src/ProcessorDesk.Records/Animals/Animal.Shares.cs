using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>How an animal is divided among jobs. Its shares and their jobs must have been loaded.</summary>
public sealed partial class Animal
{
    private const int FinestShare = 10_000;

    /// <summary>Whether the fractions come to exactly one, as they must before the first knife.</summary>
    public bool IsWhollyShared => SharesSum == Ratio.One;

    /// <summary>Gives each job its fraction anew, all at once; refused past one, and from the first knife on.</summary>
    public Finding? Divide(IReadOnlyList<(int JobId, Ratio Fraction)> fractions)
    {
        if (_shares.Any(share => share.Job.CutsLocked))
            return new Finding("", "Cutting has started on this animal, so its shares stay as they are.");
        var each = _shares.Select(share => (Share: share, Fraction: fractions.Single(one => one.JobId == share.JobId).Fraction)).ToList();
        if (each.Select(one => TooFine(one.Fraction)).FirstOrDefault(refusal => refusal is not null) is { } tooFine)
            return tooFine with { Field = "" };
        if (each.Any(one => one.Fraction < Ratio.Zero))
            return new Finding("", "A share is never less than 0.");
        var sum = each.Aggregate(Ratio.Zero, (total, one) => total + one.Fraction);
        if (sum > Ratio.One)
            return new Finding("", $"The shares come to {sum}. Together they are 1 at most.", sum.ToString(), "1");
        foreach (var (share, fraction) in each)
            share.Set(fraction, Share.PortionOf(fraction));
        return null;
    }

    private static Finding? TooFine(Ratio fraction) => fraction.Denominator > FinestShare
        ? new Finding("Fraction", "A share this fine can't be kept. Type it as 1, 1/2 or 1/4.", fraction.ToString(), $"down to 1/{FinestShare}")
        : null;
}
