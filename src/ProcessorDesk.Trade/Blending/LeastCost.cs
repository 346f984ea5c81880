namespace ProcessorDesk.Trade.Blending;

/// <summary>
/// The cheapest mix of any number of materials that keeps a band of fat, the least and the most share of each material, and what
/// is on hand of it. Worked in exact fractions: the answer is the cheapest there is, not near to it. Where several cost the same
/// it is the same one every time.
/// </summary>
public static class LeastCost
{
    private static readonly Ratio CentsPerDollar = Ratio.Of(100, 1);

    /// <param name="wanted"><see cref="BlendCheck"/> has found nothing wrong in it.</param>
    /// <exception cref="ArgumentException"><see cref="BlendCheck"/> refuses it.</exception>
    public static LeastCostAnswer Find(BlendWanted wanted)
    {
        if (BlendCheck.Check(wanted) is [var finding, ..])
            throw new ArgumentException($"{finding.Field}: {finding.Text}", nameof(wanted));
        if (BlendProgram.InParts(wanted, BlendBound.Of(wanted)).Cheapest() is not { } shares)
            return new LeastCostAnswer(null, BlendClash.Findings(wanted));

        var (counts, notes) = BlendRounding.ToDivision(wanted, shares);
        var weights = wanted.Division.Parts(wanted.Block, counts);
        var weighed = counts.Select(count => Ratio.Of(count, counts.Sum())).ToArray();
        var pounds = KeyedFigure.InMilligrams(wanted.Block, wanted.Division.Unit) / Ratio.FromDecimal(UnitFactors.MilligramsPerPound);
        return new LeastCostAnswer(
            new LeastCostBlend(
                [.. wanted.Materials.Select((material, i) => new BlendPart(material, shares[i], shares[i] * pounds, weights[i]))],
                DollarsPerPound(shares),
                Fat(shares),
                DollarsPerPound(weighed),
                Fat(weighed),
                notes),
            []);

        Ratio DollarsPerPound(Ratio[] parts) =>
            Ratio.Sum(parts.Zip(wanted.Materials, (part, material) => part * Ratio.Of(material.Price.CentsPerPound, 1))) / CentsPerDollar;

        Ratio Fat(Ratio[] parts) => Ratio.Sum(parts.Zip(wanted.Materials, (part, material) => part * material.Fat.ToRatio()));
    }
}
