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
        if (lines.Any(line => line.Reason is not null && line.Part != BalancePart.Discard))
            throw new ArgumentException("Only what is thrown away has a reason.", nameof(lines));
        Division = division;
        Start = division.Round(start);
        Lines = [.. lines.Select(line => line with { Weight = division.Round(line.Weight) })];
        Accounted = division.Sum(lines.Select(line => line.Weight));
        Rest = division.FromCount(division.CountOf(start) - division.CountOf(Accounted));
        IsByDifference = isByDifference;
    }

    /// <summary>The division every figure is on.</summary>
    public ScaleDivision Division { get; }

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

    /// <summary>What was thrown away, by reason in the order they came, added as printed.</summary>
    public IReadOnlyList<BalanceLine> Discards =>
    [
        .. Lines.Where(line => line.Part == BalancePart.Discard)
            .GroupBy(line => line.Reason, (reason, lines) => new BalanceLine(BalancePart.Discard, Division.Sum(lines.Select(line => line.Weight)), reason))
    ];

    /// <summary>Whether a species is usually weighed for its meat alone, bone and trim by difference: game is. Common practice, no source.</summary>
    public static bool IsUsuallyByDifference(Species species) => species switch
    {
        Species.WhiteTailDeer or Species.MuleDeer or Species.Elk or Species.Moose or Species.Pronghorn or Species.Bear or Species.WildBoar => true,
        Species.Hog or Species.Beef or Species.Bison or Species.Lamb or Species.Goat => false,
    };

    /// <summary>Everything is weighed: the rest is unaccounted for, and flagged over the shop's tolerance either way.</summary>
    /// <param name="start">Zero or more.</param>
    /// <param name="lines">What was weighed out of it.</param>
    /// <param name="tolerance">Part of the start that may go missing, or come out over, unasked.</param>
    /// <param name="division">The division the balance is shown at.</param>
    public static AnimalBalance Measured(Weight start, IReadOnlyList<BalanceLine> lines, Proportion tolerance, ScaleDivision division)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(start.Milligrams);
        var balance = new AnimalBalance(start, lines, division, isByDifference: false);
        return balance.IsPast(balance.Rest, tolerance)
            ? balance with { Findings = [balance.Missing(tolerance)] }
            : balance.Over(tolerance);
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
        var balance = new AnimalBalance(start, lines, division, isByDifference: true).Over(tolerance);
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

    /// <summary>
    /// The same balance owner by owner: each its part of the start and of every line, so that the owners' figures sum to the animal's,
    /// line by line and in the rest, as printed. What is odd is said of the animal, not again of each owner.
    /// </summary>
    public IReadOnlyList<AnimalBalance> Divide(OwnersShares shares)
    {
        var starts = shares.Divide(Start, Division);
        var lines = Lines.Select(line => shares.Divide(line.Weight, Division)).ToList();
        return [.. starts.Select((start, i) => new AnimalBalance(
            start, [.. Lines.Select((line, j) => line with { Weight = lines[j][i] })], Division, IsByDifference))];
    }

    private AnimalBalance Over(Proportion tolerance) => IsPast(-Rest, tolerance)
        ? this with
        {
            Findings =
            [
                new Finding("Balance",
                    $"{Division.Print(-Rest)} more came out than the {Division.Print(Start)} that went in; "
                    + $"{tolerance.Print()} is allowed for wash water and scales. Look for a weight booked twice or to the wrong animal.",
                    Division.Print(-Rest), PrintAllowed(tolerance)),
            ],
        }
        : this;

    private Finding Missing(Proportion tolerance) => new(
        "Balance",
        $"{Division.Print(Rest)} of {Division.Print(Start)} is not accounted for; {tolerance.Print()} is allowed. "
        + "Look for a weight not booked while the animal is still on the table.",
        Division.Print(Rest), PrintAllowed(tolerance));

    /// <summary>In divisions, so that just the tolerance is never past it.</summary>
    private bool IsPast(Weight amount, Proportion tolerance) =>
        Ratio.Of(Division.CountOf(amount), 1) > tolerance.ToRatio() * Ratio.Of(Division.CountOf(Start), 1);

    private string PrintAllowed(Proportion tolerance) => Division.Print(tolerance.ToRatio().Times(Start));
}
