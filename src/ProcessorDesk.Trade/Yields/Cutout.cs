namespace ProcessorDesk.Trade.Yields;

/// <summary>How a weight falls into muscle groups or cuts, by a published table scaled so that the shares sum to one.</summary>
/// <param name="Id">Lasting name; a shop's own figure names the one it stands for.</param>
/// <param name="Species">The species it is used for.</param>
/// <param name="Of">The state the shares are of.</param>
/// <param name="Groups">Each group's figure as printed in the source; only their proportion matters.</param>
/// <param name="Source">Who published it.</param>
/// <param name="Mark">How the source was read: A, B, C, M.</param>
/// <param name="Note">What to know before using it; shown with the figures.</param>
public sealed record Cutout(
    string Id, IReadOnlyList<Species> Species, CarcassState Of, IReadOnlyList<CutoutGroup> Groups, string Source, string Mark, string Note)
{
    private const string Oklahoma = "Oklahoma Department of Agriculture";

    public static IReadOnlyList<Cutout> All { get; } =
    [
        new("cutout-deer", [Trade.Species.WhiteTailDeer, Trade.Species.MuleDeer], CarcassState.Hanging,
            [new("neck", 12.6m), new("flank", 15.4m), new("shoulder", 17.8m), new("saddle", 15.5m), new("haunch", 39.4m)],
            "Massey University 1985, farmed fallow deer", "A",
            "Provisional: farmed fallow, not wild deer; the printed shares sum to 100.7 and are scaled to one."),
        new("cutout-beef", [Trade.Species.Beef], CarcassState.TakeHome,
            [
                new("round", 24m), new("sirloin", 9m), new("short loin", 8m), new("flank", 4m), new("rib", 9m), new("plate", 7m),
                new("chuck", 25m), new("brisket", 6m), new("shank", 4m), new("suet and hanging tender", 4m),
            ],
            Oklahoma, "A", ""),
        new("cutout-beef-groups", [Trade.Species.Beef], CarcassState.TakeHome,
            [new("chuck", 29m), new("rib", 9m), new("loin", 16m), new("round", 22m), new("thin cuts", 19m), new("miscellaneous", 5m)],
            "Michigan State University, freezer beef", "A", "Of a take-home weight of 70 % of the carcass."),
        new("cutout-hog", [Trade.Species.Hog], CarcassState.TakeHome,
            [
                new("ham", 28m), new("loin", 23m), new("side", 23m), new("spareribs", 6m), new("butt", 9m), new("picnic", 12m),
                new("feet", 3m), new("head", 5m), new("back fat", 23m), new("trim", 9m), new("jowl", 3m),
            ],
            Oklahoma, "A", "Pounds of a 250 lb hog, with head, feet and back fat."),
    ];

    /// <summary>The table used unasked for a species; null where none is published.</summary>
    public static Cutout? For(Species species) => All.FirstOrDefault(cutout => cutout.Species.Contains(species));

    /// <summary>A group's exact share of the whole.</summary>
    public Ratio ShareOf(CutoutGroup group) => Ratio.FromDecimal(group.Printed) / Ratio.FromDecimal(Groups.Sum(each => each.Printed));

    /// <summary>A weight over the groups, in their order, adding up in milligrams and as printed.</summary>
    public IReadOnlyList<Weight> Split(Weight weight, ScaleDivision division) =>
        division.Split(weight, [.. Groups.Select(group => decimal.ToInt64(group.Printed * 1000m))]);
}

/// <summary>One line of a table of muscle groups or cuts.</summary>
/// <param name="Name">The trade's name.</param>
/// <param name="Printed">The figure as printed in the source, to three decimals at most.</param>
public sealed record CutoutGroup(string Name, decimal Printed);
