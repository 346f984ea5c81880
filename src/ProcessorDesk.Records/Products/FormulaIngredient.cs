using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Formulas;

namespace ProcessorDesk.Records;

/// <summary>
/// One line of a formula beside the owner's lean and the added fat, as a part of these two. It points at the ingredient and keeps what
/// mattered of it when the version was made.
/// </summary>
public sealed class FormulaIngredient
{
    private FormulaIngredient()
    {
    }

    /// <param name="ingredient">Anything but a casing, which goes by the piece.</param>
    /// <param name="amount">In the basis, to a millionth.</param>
    public FormulaIngredient(int position, Ingredient ingredient, FormulaBasis basis, decimal amount)
        : this(position, ingredient.Name, basis, amount, ingredient.Nitrite, ingredient.Nitrate, ingredient.IsPork)
    {
        Ingredient = ingredient;
        Kind = ingredient.Kind;
        InMeatBlock = ingredient.InMeatBlock;
        (Salt, Fat, Water) = (ingredient.Salt, ingredient.Fat, ingredient.Water);
        Contains = ingredient.Contains;
    }

    /// <summary>A line without an ingredient, as formulas were kept before there was a larder.</summary>
    /// <param name="amount">In the basis, to a millionth: 1.75 (percent) or 4 (ounces to 100 lb).</param>
    /// <param name="nitrite">Strength in nitrite; zero is an answer, so it is always given.</param>
    /// <param name="nitrate">Strength in nitrate; zero is an answer, so it is always given.</param>
    public FormulaIngredient(
        int position, string name, FormulaBasis basis, decimal amount, Proportion nitrite, Proportion nitrate, bool isPork)
    {
        Position = position;
        Name = name.Trim();
        Basis = basis;
        AmountMillionths = decimal.ToInt64(decimal.Round(amount * 1_000_000m, MidpointRounding.AwayFromZero));
        Nitrite = nitrite;
        Nitrate = nitrate;
        IsPork = isPork;
    }

    public int FormulaVersionId { get; private set; }

    public int Position { get; private set; }

    public string Name { get; private set; } = "";

    public int? IngredientId { get; private set; }

    public Ingredient? Ingredient { get; private set; }

    /// <summary>Null in a line without an ingredient.</summary>
    public IngredientKind? Kind { get; private set; }

    public FormulaBasis Basis { get; private set; }

    public long AmountMillionths { get; private set; }

    public Proportion Nitrite { get; private set; }

    public Proportion Nitrate { get; private set; }

    public bool IsPork { get; private set; }

    /// <summary>It counts as meat in the check of the cure.</summary>
    public bool InMeatBlock { get; private set; }

    public Proportion Salt { get; private set; }

    public Proportion Fat { get; private set; }

    public Proportion Water { get; private set; }

    public Allergen Contains { get; private set; }

    /// <summary>In the words of versions older than the larder; null in all others.</summary>
    public string? AllergenWords { get; private set; }

    public bool IsCure => Nitrite > Proportion.Zero || Nitrate > Proportion.Zero;

    /// <summary>It cures what it is mixed with; meat that was cured before, such as bacon ends, does not.</summary>
    public bool Cures => IsCure && !InMeatBlock;

    public decimal Amount => AmountMillionths / 1_000_000m;

    public Ratio OfMeatBlock => FormulaLine.Part(Amount, Basis);

    public FormulaLine ToTrade() => new(Name, OfMeatBlock, Nitrite, Nitrate, IsCure)
    {
        Salt = Salt,
        Fat = Fat,
        Water = Water,
        InMeatBlock = InMeatBlock,
        Accelerator = Records.Ingredient.AcceleratorOf(Kind),
        Additive = Records.Ingredient.AdditiveOf(Kind),
        Price = Ingredient?.Price,
    };
}
