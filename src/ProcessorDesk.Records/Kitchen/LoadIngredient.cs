using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Curing;

namespace ProcessorDesk.Records;

/// <summary>One thing weighed into a load beside the meat. Never changed: the load was mixed with it.</summary>
public sealed class LoadIngredient
{
    private LoadIngredient()
    {
    }

    /// <param name="nitrite">Strength as stated when it was weighed.</param>
    /// <param name="nitrate">Strength as stated when it was weighed.</param>
    public LoadIngredient(int position, string name, Weight planned, Weight weighed, WeightUnit keyedIn, Proportion nitrite, Proportion nitrate)
    {
        Position = position;
        Name = name;
        Planned = planned;
        Weighed = weighed;
        KeyedIn = keyedIn;
        Nitrite = nitrite;
        Nitrate = nitrate;
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

    public bool HoldsCure => Nitrite > Proportion.Zero || Nitrate > Proportion.Zero;

    public CureAmount ToCure() => new(Name, Weighed, Nitrite, Nitrate, KeyedIn);
}
