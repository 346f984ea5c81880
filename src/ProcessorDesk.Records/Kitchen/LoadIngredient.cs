using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Curing;

namespace ProcessorDesk.Records;

/// <summary>A second weighing, as it was keyed, and whose hand it was.</summary>
public sealed record WeighedAgain(Weight Weighed, WeightUnit KeyedIn, int ById);

/// <summary>One thing weighed into a load beside the meat. Never changed: the load was mixed with it.</summary>
public sealed class LoadIngredient
{
    private LoadIngredient()
    {
    }

    /// <param name="line">The formula's line.</param>
    /// <param name="lot">The lot it came from, whose label states the strength; null where none was noted, and the formula's strength counts.</param>
    /// <param name="again">The second weighing, of a cure; null where it was weighed once.</param>
    public LoadIngredient(FormulaIngredient line, IngredientLot? lot, Weight planned, Weight weighed, WeightUnit keyedIn, WeighedAgain? again = null)
    {
        (Position, Name, InMeatBlock) = (line.Position, line.Name, line.InMeatBlock);
        (Planned, Weighed, KeyedIn) = (planned, weighed, keyedIn);
        (Nitrite, Nitrate) = (lot?.Nitrite ?? line.Nitrite, lot?.Nitrate ?? line.Nitrate);
        if (Cures)
            (WeighedAgain, AgainKeyedIn, AgainById) = (again?.Weighed, again?.KeyedIn, again?.ById);
    }

    public int LoadId { get; private set; }

    public int Position { get; private set; }

    public string Name { get; private set; } = "";

    /// <summary>What the formula asks for on the meat as weighed.</summary>
    public Weight Planned { get; private set; }

    public Weight Weighed { get; private set; }

    /// <summary>The unit it was typed in.</summary>
    public WeightUnit KeyedIn { get; private set; }

    public Proportion Nitrite { get; private set; }

    public Proportion Nitrate { get; private set; }

    /// <summary>It counts as meat in the check of the cure.</summary>
    public bool InMeatBlock { get; private set; }

    /// <summary>What the second weighing of a cure showed, noted with the first; null where it was weighed once, and for all that does not cure.</summary>
    public Weight? WeighedAgain { get; private set; }

    public WeightUnit? AgainKeyedIn { get; private set; }

    /// <summary>Whose hand weighed again: another's, or the same after setting the scale to zero.</summary>
    public int? AgainById { get; private set; }

    public bool HoldsCure => Nitrite > Proportion.Zero || Nitrate > Proportion.Zero;

    /// <summary>It cures what it is mixed with; meat that was cured before does not.</summary>
    public bool Cures => HoldsCure && !InMeatBlock;

    /// <summary>
    /// What of it holds cure: by the label of each lot it is noted to have come from, the rest at the strength of the mixing.
    /// </summary>
    /// <param name="uses">Of its load, with their lots; those struck and those of other lines are passed over.</param>
    /// <param name="again">By the second weighing, where there is one.</param>
    public IEnumerable<CureAmount> ToCures(IEnumerable<LotUse> uses, bool again = false)
    {
        var (weighed, keyedIn) = again && WeighedAgain is { } second ? (second, AgainKeyedIn ?? KeyedIn) : (Weighed, KeyedIn);
        var rest = weighed;
        foreach (var use in uses.Where(use => use.StruckAt is null && use.Position == Position))
        {
            rest -= use.Amount;
            yield return new CureAmount($"{Name}, lot {use.Lot.LotCode}", use.Amount, use.Lot.Nitrite, use.Lot.Nitrate, keyedIn);
        }

        if (rest.IsPositive || rest == weighed)
            yield return new CureAmount(Name, rest, Nitrite, Nitrate, keyedIn);
    }
}
