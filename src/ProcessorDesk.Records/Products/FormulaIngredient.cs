using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>One ingredient of a formula that is not meat, as a part of the meat block.</summary>
public sealed class FormulaIngredient
{
    private FormulaIngredient()
    {
    }

    /// <param name="amount">In the basis, to a millionth: 1.75 (percent) or 4 (ounces to 100 lb).</param>
    /// <param name="nitrite">Strength in nitrite; zero is an answer, so it is always given.</param>
    /// <param name="nitrate">Strength in nitrate; zero is an answer, so it is always given.</param>
    public FormulaIngredient(
        int position, string name, IngredientBasis basis, decimal amount, Proportion nitrite, Proportion nitrate, bool isPork, string? allergens)
    {
        Position = position;
        Name = name.Trim();
        Basis = basis;
        AmountMillionths = decimal.ToInt64(decimal.Round(amount * 1_000_000m, MidpointRounding.AwayFromZero));
        Nitrite = nitrite;
        Nitrate = nitrate;
        IsPork = isPork;
        Allergens = Texts.OrNull(allergens);
    }

    public int FormulaVersionId { get; private set; }

    public int Position { get; private set; }

    public string Name { get; private set; } = "";

    public IngredientBasis Basis { get; private set; }

    public long AmountMillionths { get; private set; }

    public Proportion Nitrite { get; private set; }

    public Proportion Nitrate { get; private set; }

    public bool IsPork { get; private set; }

    public string? Allergens { get; private set; }

    public bool IsCure => Nitrite > Proportion.Zero || Nitrate > Proportion.Zero;

    public decimal Amount => AmountMillionths / 1_000_000m;

    public Ratio OfMeatBlock => Basis switch
    {
        IngredientBasis.PercentOfMeatBlock => Ratio.Of(AmountMillionths, 100_000_000),
        IngredientBasis.OuncesPerHundredPounds => Ratio.Of(AmountMillionths, 1_600_000_000),
    };
}
