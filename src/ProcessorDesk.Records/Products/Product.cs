using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Formulas;
using ProcessorDesk.Trade.Process;

namespace ProcessorDesk.Records;

/// <summary>What trim can become.</summary>
public sealed class Product : IVersioned
{
    private readonly List<FormulaVersion> _formulas = [];

    private Product()
    {
    }

    public Product(string name, ProcessKind processKind, bool cured, bool isPlainGround = false)
    {
        Describe(name, processKind, cured);
        IsPlainGround = isPlainGround;
    }

    public int Id { get; private set; }

    public string Name { get; private set; } = "";

    public ProcessKind ProcessKind { get; private set; }

    /// <summary>Made with a curing salt: a formula without a cure line is not offered.</summary>
    public bool Cured { get; private set; }

    /// <summary>Whose rules for product for sale are shown beside its formula, as a guide; null for none.</summary>
    public ProductClass? Class { get; private set; }

    /// <summary>The one product that takes what no ask takes.</summary>
    public bool IsPlainGround { get; private set; }

    /// <summary>The table its cooking is held against.</summary>
    public LethalityKind Cooking { get; private set; } = LethalityKind.Meat65Log;

    /// <summary>The manager's support in writing for a table that needs it; null where it needs none.</summary>
    public string? CookingSupport { get; private set; }

    /// <summary>The part of its green weight that has to be gone when it is dry, by the shop's own process; null for none.</summary>
    public Proportion? DryingLoss { get; private set; }

    public DateTime? RetiredAt { get; private set; }

    public int Version { get; private set; }

    public IReadOnlyCollection<FormulaVersion> Formulas => _formulas;

    public void Describe(string name, ProcessKind processKind, bool cured)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        Name = name.Trim();
        ProcessKind = processKind;
        Cured = cured;
    }

    public void GuideBy(ProductClass? rules) => Class = rules;

    /// <summary>What batches mixed from now on are held against. 5-log on product that is kept cold needs support of its own.</summary>
    /// <param name="support">The manager's own words: what supports it, by whom, of what day.</param>
    /// <param name="dryingLoss">Below 100 %.</param>
    public Finding? HoldAgainst(LethalityKind cooking, string? support, Proportion? dryingLoss)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(dryingLoss ?? Proportion.Zero, Proportion.Whole);
        if (cooking == LethalityKind.Meat5Log && string.IsNullOrWhiteSpace(support))
            return new Finding("Support", "5-log on product that must be kept cold needs written support of its own. Type what it is, by whom and of what day.", "", "", LethalityTables.For(cooking)!.Source);
        (Cooking, CookingSupport, DryingLoss) = (cooking, cooking == LethalityKind.Meat5Log ? Texts.OrNull(support) : null, dryingLoss);
        return null;
    }

    /// <summary>
    /// Adds the next version of the formula. A cured product needs a line that bears nitrite or nitrate. All formulas
    /// must have been loaded.
    /// </summary>
    public Finding? Reformulate(FormulaVersion formula)
    {
        if (Cured && !formula.HasCure)
            return new Finding("Ingredients", "This product is cured, so its formula needs a cure line with its strength stated.");
        formula.Number = _formulas.Count == 0 ? 1 : _formulas.Max(one => one.Number) + 1;
        _formulas.Add(formula);
        return null;
    }

    public Finding? Retire(DateTime at)
    {
        if (IsPlainGround)
            return new Finding("", "Plain ground takes what no ask takes; it can't be retired.");
        RetiredAt ??= at;
        return null;
    }

    public void BringBack() => RetiredAt = null;
}
