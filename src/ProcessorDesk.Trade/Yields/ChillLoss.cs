namespace ProcessorDesk.Trade.Yields;

/// <summary>What a hot carcass loses to the air on its first day.</summary>
/// <param name="Id">Lasting name; a shop's own figure names the one it stands for.</param>
/// <param name="Species">The species it is used for.</param>
/// <param name="Low">Least loss of the hot weight.</param>
/// <param name="High">Greatest loss of the hot weight.</param>
/// <param name="LeastMeasured">Where the same source measured less than it says is usual; null where it did not.</param>
/// <param name="Source">Who published it.</param>
/// <param name="Mark">How the source was read: A, B, C, M.</param>
public sealed record ChillLoss(
    string Id, IReadOnlyList<Species> Species, Proportion Low, Proportion High, Proportion? LeastMeasured, string Source, string Mark)
{
    /// <summary>Every published figure, once.</summary>
    public static IReadOnlyList<ChillLoss> All { get; } =
    [
        new("chill-beef", [Trade.Species.Beef], Proportion.FromPercent(2m), Proportion.FromPercent(5m), null, "Mississippi State University P3489", "A"),
        new("chill-hog", [Trade.Species.Hog], Proportion.FromPercent(1m), Proportion.FromPercent(1.5m), null, "University of Kentucky", "A"),
        new("chill-deer", [Trade.Species.WhiteTailDeer, Trade.Species.MuleDeer], Proportion.FromPercent(1.35m),
            Proportion.FromPercent(1.98m), null, "Fitzhenry 2019 (fallow deer)", "A"),
        new("chill-goat", [Trade.Species.Goat], Proportion.FromPercent(3m), Proportion.FromPercent(10m), Proportion.FromPercent(2.2m),
            "University of Tennessee (2.2 to 3.5 % where measured)", "A"),
    ];

    /// <summary>The figure for a species; null where none is published.</summary>
    public static ChillLoss? For(Species species) => All.FirstOrDefault(loss => loss.Species.Contains(species));

    /// <summary>The chilled weight to expect, greatest loss first; each rounded once, to the milligram.</summary>
    public (Weight Low, Weight High) After(Weight hot) => (hot - High.ToRatio().Times(hot), hot - Low.ToRatio().Times(hot));

    /// <summary>The hot weight a chilled one comes of, least loss first; each rounded once, to the milligram.</summary>
    public (Weight Low, Weight High) Before(Weight chilled) =>
        ((Ratio.One / (Ratio.One - Low.ToRatio())).Times(chilled), (Ratio.One / (Ratio.One - High.ToRatio())).Times(chilled));

    /// <summary>The part of the hot weight that was lost, exactly, of the figures keyed; negative where the carcass gained, as a wet one may.</summary>
    /// <param name="hot">Above zero.</param>
    /// <param name="chilled">Zero or more.</param>
    public static Ratio Measured(Weight hot, Weight chilled)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(hot.Milligrams, nameof(hot));
        ArgumentOutOfRangeException.ThrowIfNegative(chilled.Milligrams, nameof(chilled));
        return Ratio.One - ExactPounds.Of(chilled) / ExactPounds.Of(hot);
    }

    /// <summary>"2 % to 5 %".</summary>
    public string PrintRange() => $"{Low.Print()} to {High.Print()}";
}
