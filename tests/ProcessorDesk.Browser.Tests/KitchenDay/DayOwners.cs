using static ProcessorDesk.Browser.Tests.KitchenDay.DayGoods;

namespace ProcessorDesk.Browser.Tests.KitchenDay;

/// <summary>One of the day's owners, with a deer and what is to be made of its trim.</summary>
/// <param name="Lugs">Net lean, in pounds, lug by lug.</param>
/// <param name="Asks">Pounds of own lean; null takes the rest and stands last.</param>
internal sealed record DayOwner(string Name, bool Pools, decimal[] Lugs, params (string Product, decimal? Lean)[] Asks)
{
    public decimal Lean => Lugs.Sum();

    /// <summary>What the split gives an ask.</summary>
    public decimal Of(string product) => Asks.Single(ask => ask.Product == product).Lean ?? Lean - Asks.Sum(ask => ask.Lean ?? 0m);

    public bool WantsNoPork => Asks.All(ask => !Find(ask.Product).HasPork);
}

internal static class DayOwners
{
    /// <summary>Agreed to pooling like the others, until the laboratory asked for a second look.</summary>
    public const string Held = "Sven Holt";

    /// <summary>Whose plain ground waits for another day.</summary>
    public const string Later = "Rosa Lane";

    /// <summary>Into whose rings the wrong lug goes, and whose lug it is.</summary>
    public const string Mistaken = "Ugo Wynn";
    public const string Wronged = "Tilda Croft";

    /// <summary>Whose summer sausage comes out of the smokehouse too early.</summary>
    public const string TooEarly = "Vera Stead";

    public static readonly IReadOnlyList<DayOwner> All =
    [
        new("Alma Reed", true, [14.20m, 11.87m], (Links, 10m), (Jerky, 11m), (Plain, null)),
        new("Bert Lowe", true, [18.35m], (Links, 10m), (Plain, null)),
        new("Cora Finch", true, [21.24m], (Links, 10m), (Jerky, null)),
        new("Dale Moss", true, [19.13m], (Hot, 9m), (Rings, null)),
        new("Edda Stone", true, [12.66m, 12.49m], (Hot, 9m), (Rings, 10m), (Plain, null)),
        new("Finn Hale", true, [18.97m], (Hot, 9m), (Rings, null)),
        new("Greta Marsh", true, [15.08m, 14.03m], (Hot, 9m), (Summer, 12m), (Sticks, null)),
        new("Hugo Birch", true, [14.41m, 13.78m], (Hot, 9m), (Summer, 12m), (Plain, null)),
        new("Iris Vale", true, [16.06m], (Hot, 9m), (Cheddar, null)),
        new("Jon Thorn", true, [23.91m], (Hot, 9m), (Cheddar, 7m), (Sticks, null)),
        new("Kara Wells", true, [16.44m], (Hot, 9m), (Raw, null)),
        new("Lars Penn", true, [22.18m], (Rings, 10m), (Summer, null)),
        new("Mina Cole", true, [11.02m, 10.85m], (Rings, 10m), (Raw, 7.5m), (Plain, null)),
        new("Nils Farr", true, [17.09m], (Rings, 10m), (Cheddar, null)),
        new("Olga Dunn", true, [15.77m, 14.86m], (Summer, 12m), (Raw, 7.5m), (Jerky, null)),
        new("Paul Ridge", true, [14.02m, 13.11m], (Summer, 12m), (Cheddar, 7m), (Sticks, null)),
        new(Later, true, [12.94m, 11.73m], (Raw, 7.5m), (Sticks, 8m), (Plain, null)),
        new(Held, true, [19.05m], (Hot, 9m), (Rings, null)),
        new(Wronged, false, [20.31m], (Hot, null)),
        new(Mistaken, false, [20.12m, 19.96m], (Rings, null)),
        new(TooEarly, false, [24.17m], (Summer, null)),
        new("Wim Alder", false, [25.03m], (Jerky, null)),
        new("Yara Frost", false, [15.48m, 14.69m], (Plain, null)),
        new("Zeno Bell", false, [22.27m], (Links, null)),
        new("Otis Quill", false, [20.58m], (Sticks, null)),
    ];

    public static DayOwner Find(string name) => All.Single(owner => owner.Name == name);
}
