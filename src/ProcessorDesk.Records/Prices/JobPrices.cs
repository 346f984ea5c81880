namespace ProcessorDesk.Records;

/// <summary>The prices a job is charged at.</summary>
/// <param name="Own">Of the list it was taken at.</param>
/// <param name="InForce">Today's, for what its own list lacks.</param>
public sealed record JobPrices(IReadOnlyList<Price> Own, IReadOnlyList<Price> InForce)
{
    public IEnumerable<Price> Extras => Own.Where(price => price.For == PriceFor.Extra);

    public bool Charge(JobAnimal animal) => Own.Any(price => price.For == PriceFor.Animal && price.Species == animal.Charged.Species);
}
