using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Curing;

namespace ProcessorDesk.Records;

/// <summary>One thing weighed into a load beside the meat. Never changed: the load was mixed with it.</summary>
public sealed class LoadIngredient
{
    private LoadIngredient()
    {
    }

    /// <param name="line">The formula's line.</param>
    /// <param name="lot">The lot it came from, whose label states the strength; null where none was noted, and the formula's strength counts.</param>
    public LoadIngredient(FormulaIngredient line, IngredientLot? lot, Weight planned, Weight weighed, WeightUnit keyedIn)
    {
        (Position, Name, InMeatBlock) = (line.Position, line.Name, line.InMeatBlock);
        (Planned, Weighed, KeyedIn) = (planned, weighed, keyedIn);
        (Nitrite, Nitrate) = (lot?.Nitrite ?? line.Nitrite, lot?.Nitrate ?? line.Nitrate);
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

    public bool HoldsCure => Nitrite > Proportion.Zero || Nitrate > Proportion.Zero;

    /// <summary>
    /// What of it holds cure: by the label of each lot it is noted to have come from, the rest at the strength of the mixing.
    /// </summary>
    /// <param name="uses">Of its load, with their lots; those struck and those of other lines are passed over.</param>
    public IEnumerable<CureAmount> ToCures(IEnumerable<LotUse> uses)
    {
        var rest = Weighed;
        foreach (var use in uses.Where(use => use.StruckAt is null && use.Position == Position))
        {
            rest -= use.Amount;
            yield return new CureAmount($"{Name}, lot {use.Lot.LotCode}", use.Amount, use.Lot.Nitrite, use.Lot.Nitrate, KeyedIn);
        }

        if (rest.IsPositive || rest == Weighed)
            yield return new CureAmount(Name, rest, Nitrite, Nitrate, KeyedIn);
    }
}
