namespace ProcessorDesk.Trade.Curing;

/// <summary>A weight of something that holds nitrite or nitrate: a premixed cure, a pure salt, a seasoning with cure in it.</summary>
/// <param name="Amount">What is weighed in; zero or more.</param>
/// <param name="Nitrite">Nitrite as a part of it, as its maker states: never assumed.</param>
/// <param name="Nitrate">Nitrate as a part of it, as its maker states; zero where there is none.</param>
/// <param name="KeyedIn">The unit it was weighed in, so that the figure shown is worked from the figure keyed.</param>
public sealed record CureAmount(
    string Name, Weight Amount, Proportion Nitrite, Proportion Nitrate, WeightUnit KeyedIn = WeightUnit.Gram)
{
    /// <summary>The figure as keyed, where it is at hand; otherwise it is found again behind the amount.</summary>
    public KeyedWeight? Keyed { get; init; }

    /// <summary>
    /// The salt it brings where all the rest of it is salt, as in pink curing salt; to the nearest milligram. 4 oz of a cure of
    /// 6.25 % nitrite and 4 % nitrate bring 3.59 oz.
    /// </summary>
    public Weight RestAsSalt => CureStrength.Rest(Nitrite, Nitrate).ToRatio().Times(Amount);

    /// <summary>Milligrams weighed in, exactly as keyed.</summary>
    internal Ratio Exactly => Keyed?.Milligrams ?? KeyedFigure.InMilligrams(Amount, KeyedIn);

    /// <summary>A cure by the figure that was typed, such as 4.0001 oz.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The figure is below zero.</exception>
    public static CureAmount Of(string name, decimal figure, WeightUnit unit, Proportion nitrite, Proportion nitrate)
    {
        var keyed = KeyedWeight.Of(figure, unit);
        return new CureAmount(name, keyed.Kept, nitrite, nitrate, unit) { Keyed = keyed };
    }
}
