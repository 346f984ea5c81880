namespace ProcessorDesk.Trade.Balance;

/// <summary>How much of an animal may be unaccounted for, or come out over, unasked: the shop's own figures.</summary>
/// <param name="Usual">For every species without a figure of its own.</param>
/// <param name="Own">Figures of single species.</param>
public sealed record BalanceTolerances(Proportion Usual, IReadOnlyDictionary<Species, Proportion> Own)
{
    /// <summary>One figure for all.</summary>
    public static BalanceTolerances Same(Proportion usual) => new(usual, new Dictionary<Species, Proportion>());

    public Proportion For(Species species) => Own.TryGetValue(species, out var own) ? own : Usual;

    /// <summary>For animals on one table together: the widest of theirs, since nobody can say whose weight is missing.</summary>
    /// <param name="species">At least one.</param>
    /// <exception cref="InvalidOperationException">There is no species.</exception>
    public Proportion For(IEnumerable<Species> species) => species.Select(For).Max();
}
