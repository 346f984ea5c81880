using ProcessorDesk.Trade.Yields;

namespace ProcessorDesk.Trade.Balance;

/// <summary>
/// Where the weight of one animal, or of one owner's share of it, went: what it started from, what was weighed out of it,
/// and the rest. Every figure is on the shop's division, so that start = lines + rest as printed.
/// </summary>
public sealed record AnimalBalance
{
    private AnimalBalance(Weight start, IReadOnlyList<BalanceLine> lines, ScaleDivision division, bool isByDifference)
    {
        Start = division.Round(start);
        Lines = [.. lines.Select(line => line with { Weight = division.Round(line.Weight) })];
        Accounted = division.Sum(lines.Select(line => line.Weight));
        Rest = division.FromCount(division.CountOf(start) - division.CountOf(Accounted));
        IsByDifference = isByDifference;
    }

    /// <summary>Arrival or hanging weight, on the division.</summary>
    public Weight Start { get; }

    /// <summary>What was weighed, each on the division.</summary>
    public IReadOnlyList<BalanceLine> Lines { get; }

    /// <summary>The lines, added as printed.</summary>
    public Weight Accounted { get; }

    /// <summary>Start less accounted: unaccounted, or bone and trim by difference. Negative where more came out than went in.</summary>
    public Weight Rest { get; }

    /// <summary>Whether the rest stands for what was not weighed, bone, fat and discard, rather than for what is missing.</summary>
    public bool IsByDifference { get; }

    /// <summary>What is odd; it warns while the animal is on the table and blocks nothing.</summary>
    public IReadOnlyList<Finding> Findings { get; private init; } = [];

    public bool IsFlagged => Findings.Count > 0;

    /// <summary>Everything is weighed: the rest is unaccounted for, and flagged over the shop's tolerance either way.</summary>
    /// <param name="start">Zero or more.</param>
    /// <param name="lines">What was weighed out of it.</param>
    /// <param name="tolerance">Part of the start that may go missing, or come out over, unasked.</param>
    /// <param name="division">The division the balance is shown at.</param>
    public static AnimalBalance Measured(Weight start, IReadOnlyList<BalanceLine> lines, Proportion tolerance, ScaleDivision division)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(start.Milligrams);
        var balance = new AnimalBalance(start, lines, division, isByDifference: false);
        var allowed = tolerance.ToRatio().Times(balance.Start);
        if (balance.Rest > allowed)
            return balance with { Findings = [Missing(balance, tolerance, allowed, division)] };
        return balance.Over(tolerance, division);
    }

    /// <summary>
    /// Only meat and shrink are weighed, as with most deer: the rest is bone, fat and discard. Flagged where the meat is past
    /// the widest published range, or more came out than hung by more than the tolerance, wash water allowed for.
    /// </summary>
    /// <param name="start">Zero or more.</param>
    /// <param name="lines">Cuts, lean and what else was weighed.</param>
    /// <param name="meat">What this start is expected to give in cuts and lean; null where nothing is published.</param>
    /// <param name="tolerance">Part of the start that may come out over.</param>
    /// <param name="division">The division the balance is shown at.</param>
    public static AnimalBalance ByDifference(
        Weight start, IReadOnlyList<BalanceLine> lines, YieldForecast? meat, Proportion tolerance, ScaleDivision division)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(start.Milligrams);
        var balance = new AnimalBalance(start, lines, division, isByDifference: true).Over(tolerance, division);
        var weighed = division.Sum(lines.Where(line => line.Part is BalancePart.Cuts or BalancePart.Lean).Select(line => line.Weight));
        var statement = YieldStatement.Of(balance.Start, weighed, meat, division);
        return balance.IsFlagged || !statement.IsFlagged
            ? balance
            : balance with
            {
                Findings =
                [
                    new Finding("Balance", statement.Words, division.Print(weighed),
                        $"{division.PrintFigure(meat!.Low!.Value)} to {division.Print(meat.High!.Value)}", meat.Source),
                ],
            };
    }

    private AnimalBalance Over(Proportion tolerance, ScaleDivision division)
    {
        var allowed = tolerance.ToRatio().Times(Start);
        return -Rest <= allowed
            ? this
            : this with
            {
                Findings =
                [
                    new Finding("Balance",
                        $"{division.Print(-Rest)} more came out than the {division.Print(Start)} that went in; "
                        + $"{tolerance.Print()} is allowed for wash water and scales. Look for a weight booked twice or to the wrong animal.",
                        division.Print(-Rest), division.Print(allowed)),
                ],
            };
    }

    private static Finding Missing(AnimalBalance balance, Proportion tolerance, Weight allowed, ScaleDivision division) =>
        new("Balance",
            $"{division.Print(balance.Rest)} of {division.Print(balance.Start)} is not accounted for; {tolerance.Print()} is allowed. "
            + "Look for a weight not booked while the animal is still on the table.",
            division.Print(balance.Rest), division.Print(allowed));
}
