namespace ProcessorDesk.Trade.Curing;

/// <summary>A weight of something that holds nitrite or nitrate: a premixed cure, a pure salt, a seasoning with cure in it.</summary>
/// <param name="Amount">What is weighed in; zero or more.</param>
/// <param name="Nitrite">Nitrite as a part of it, as its maker states: never assumed.</param>
/// <param name="Nitrate">Nitrate as a part of it, as its maker states; zero where there is none.</param>
/// <param name="KeyedIn">The unit it was weighed in, so that the figure shown is worked from the figure keyed.</param>
public sealed record CureAmount(
    string Name, Weight Amount, Proportion Nitrite, Proportion Nitrate, WeightUnit KeyedIn = WeightUnit.Gram);
