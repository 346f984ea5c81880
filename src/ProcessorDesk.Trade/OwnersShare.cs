namespace ProcessorDesk.Trade;

/// <summary>One owner's share of an animal beside everybody else's, so that all the owners' parts sum to the whole.</summary>
/// <param name="All">Everybody's fractions.</param>
/// <param name="Place">Which of them is meant.</param>
public sealed record OwnersShare(OwnersShares All, int Place)
{
    /// <summary>The whole animal.</summary>
    public static OwnersShare Whole { get; } = new(OwnersShares.Whole, 0);

    /// <summary>A fraction where the other owners are not known: their parts may then not sum to the whole.</summary>
    public static OwnersShare Alone(Ratio fraction) => new(OwnersShares.Of([fraction]), 0);

    /// <summary>Exact.</summary>
    public Ratio Fraction => All.Fractions[Place];

    /// <inheritdoc cref="OwnersShares.Divide(Weight, ScaleDivision)"/>
    public Weight Of(Weight whole, ScaleDivision division) => All.Divide(whole, division)[Place];

    /// <inheritdoc cref="OwnersShares.Divide(Money)"/>
    public Money Of(Money whole) => All.Divide(whole)[Place];
}
