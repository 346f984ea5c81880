namespace ProcessorDesk.Trade.Formulas;

/// <summary>What a mix is made of, as the formula has it: every figure an exact part of the meat block, which is one.</summary>
/// <param name="Total">The meat block and every line: one or more.</param>
/// <param name="Salt">All salt, that of the cures included.</param>
/// <param name="AddedWater">Water added; that which is in the meat does not count.</param>
/// <param name="Additives">The lines the rules for sausage speak of, summed by kind.</param>
/// <param name="Cost">Cents for the mix of one pound of meat block and its casings; null where a price is not known.</param>
public sealed record FormulaComposition(
    Ratio Total, Ratio Salt, Ratio Fat, Ratio AddedWater, IReadOnlyDictionary<Additive, Ratio> Additives, Ratio? Cost)
{
    public Ratio SaltOfMix => Salt / Total;

    public Ratio FatOfMix => Fat / Total;

    public Ratio AddedWaterOfMix => AddedWater / Total;

    /// <summary>Dollars a pound of the mix, exactly; null where a price is not known.</summary>
    public Ratio? CostPerPound => Cost / Total / Ratio.Of(100, 1);

    /// <summary>Dollars a pound of finished product, exactly; null where a price is not known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">All of it is lost.</exception>
    public Ratio? CostPerFinishedPound(Proportion loss)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(loss, Proportion.Whole);
        return CostPerPound / (Ratio.One - loss.ToRatio());
    }

    /// <param name="lean">The lean share of the block.</param>
    /// <param name="addedFat">The rest of the block; not looked at where the formula is all lean.</param>
    public static FormulaComposition Of(Formula formula, MeatContent lean, MeatContent addedFat)
    {
        var (leanPart, fatPart) = (formula.LeanShare.ToRatio(), Ratio.One - formula.LeanShare.ToRatio());
        var lines = formula.Lines;
        return new FormulaComposition(
            Ratio.One + formula.Additions,
            Sum(lines, line => line.Salt.ToRatio()),
            leanPart * lean.Fat.ToRatio() + fatPart * addedFat.Fat.ToRatio() + Sum(lines, line => line.Fat.ToRatio()),
            Sum(lines, line => line.Water.ToRatio()),
            lines.GroupBy(line => line.Additive).ToDictionary(kind => kind.Key, kind => Sum(kind, _ => Ratio.One)),
            CostOf(lean, leanPart) + CostOf(addedFat, fatPart) + CostOf(lines) + CostOf(formula.Pieces, Ratio.One + formula.Additions));
    }

    /// <summary>A part of the mix before anything is lost.</summary>
    public Ratio OfMix(ProductPart part) => Amount(part, AddedWater) / Total;

    /// <summary>
    /// A part of finished product. What is lost in cooking and drying is counted as water, of which the added goes first
    /// (common practice, no source).
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">All of it is lost.</exception>
    public Ratio OfFinished(ProductPart part, Proportion loss)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(loss, Proportion.Whole);
        var lost = Total * loss.ToRatio();
        var water = AddedWater > lost ? AddedWater - lost : Ratio.Zero;
        return Amount(part, water) / (Total - lost);
    }

    private Ratio Amount(ProductPart part, Ratio water) => part switch
    {
        ProductPart.Fat => Fat,
        ProductPart.AddedWater => water,
        ProductPart.FatAndAddedWater => Fat + water,
        ProductPart.Meat => Ratio.One,
        ProductPart.Binders => Kind(Additive.Binder) + Kind(Additive.IsolatedSoyProtein) + Kind(Additive.SodiumCaseinate),
        ProductPart.IsolatedSoyProtein => Kind(Additive.IsolatedSoyProtein),
        ProductPart.SodiumCaseinate => Kind(Additive.SodiumCaseinate),
        ProductPart.Phosphate => Kind(Additive.Phosphate),
    };

    private Ratio Kind(Additive kind) => Additives.GetValueOrDefault(kind);

    private static Ratio Sum(IEnumerable<FormulaLine> lines, Func<FormulaLine, Ratio> held) =>
        lines.Aggregate(Ratio.Zero, (sum, line) => sum + line.OfMeatBlock * held(line));

    private static Ratio? CostOf(MeatContent meat, Ratio part) => part.IsZero ? Ratio.Zero : part * Cents(meat.Price);

    private static Ratio? CostOf(IEnumerable<FormulaLine> lines) =>
        lines.Aggregate((Ratio?)Ratio.Zero, (sum, line) => sum + (line.OfMeatBlock.IsZero ? Ratio.Zero : line.OfMeatBlock * Cents(line.Price)));

    private static Ratio? CostOf(IEnumerable<PieceLine> pieces, Ratio total) =>
        pieces.Aggregate((Ratio?)Ratio.Zero, (sum, piece) => sum + piece.CentsPerPound * total);

    private static Ratio? Cents(PricePerPound? price) => price is { } known ? Ratio.Of(known.CentsPerPound, 1) : null;
}
