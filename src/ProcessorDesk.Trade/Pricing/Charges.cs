using System.Globalization;

namespace ProcessorDesk.Trade.Pricing;

/// <summary>
/// Makes the lines of an invoice. The amount of a line and the tax on it are each rounded once, to the cent, halves away from
/// zero; a tax rate of null means the line is not taxed.
/// </summary>
public static class Charges
{
    /// <summary>A fixed amount; negative for a credit.</summary>
    public static ChargeLine Flat(string text, Money amount, Proportion? tax) => Line(text, "", "", "", amount, tax);

    /// <summary>
    /// A fixed amount for an animal, as one of its owners pays it: divided by largest remainder, so that the owners' lines sum to it. The
    /// tax is rounded on each owner's own line.
    /// </summary>
    /// <param name="text">What it is for.</param>
    /// <param name="share">Whose line it is, beside everybody else's.</param>
    /// <param name="whole">The charge for the whole animal.</param>
    /// <param name="tax">Null where the line is not taxed.</param>
    public static ChargeLine Part(string text, OwnersShare share, Money whole, Proportion? tax) => share.Fraction == Ratio.One
        ? Flat(text, whole, tax)
        : Line(text, share.Fraction.ToString(), "of", whole.Print(), share.Of(whole), tax);

    /// <summary>A weight as printed at the division, times the rate, and no less than the minimum where there is one.</summary>
    /// <param name="text">What it is for.</param>
    /// <param name="weight">Zero or more.</param>
    /// <param name="division">The division the weight is printed at.</param>
    /// <param name="rate">Cents per pound.</param>
    /// <param name="tax">Null where the line is not taxed.</param>
    /// <param name="minimum">The least this line charges; the rate then says so.</param>
    public static ChargeLine PerPound(
        string text, Weight weight, ScaleDivision division, PricePerPound rate, Proportion? tax, Money? minimum = null)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(weight.Milligrams);
        var amount = rate.For(weight, division);
        return minimum is { } least && amount < least
            ? Line(text, division.PrintFigure(weight), UnitFactors.Symbol(division.Unit), $"{rate.Print()}, at least {least.Print()}", least, tax)
            : Line(text, division.PrintFigure(weight), UnitFactors.Symbol(division.Unit), rate.Print(), amount, tax);
    }

    /// <summary>A count times the price of one.</summary>
    /// <param name="text">What it is for.</param>
    /// <param name="count">Zero or more.</param>
    /// <param name="each">The price of one.</param>
    /// <param name="tax">Null where the line is not taxed.</param>
    /// <param name="unit">What one is called: "piece", "pack", "day".</param>
    public static ChargeLine PerPiece(string text, int count, Money each, Proportion? tax, string unit = "piece")
    {
        ArgumentOutOfRangeException.ThrowIfNegative(count);
        return Line(text, count.ToString("N0", CultureInfo.InvariantCulture), unit, $"{each.Print()} / {unit}", each * count, tax);
    }

    /// <summary>The line that brings others up to a minimum charge; null where they already reach it.</summary>
    public static ChargeLine? UpToMinimum(string text, IEnumerable<ChargeLine> lines, Money minimum, Proportion? tax)
    {
        var missing = minimum - Money.Sum(lines.Select(line => line.Amount));
        return missing > Money.Zero ? Flat(text, missing, tax) : null;
    }

    private static ChargeLine Line(string text, string quantity, string unit, string rate, Money amount, Proportion? tax) =>
        new(text, quantity, unit, rate, amount, tax is not null, tax is { } share ? share.ToRatio().Times(amount) : Money.Zero);
}
