using ProcessorDesk.Records;
using ProcessorDesk.Trade;

namespace ProcessorDesk.SeedDemo;

/// <summary>What comes through the made-up shop's door.</summary>
internal static class DemoAnimal
{
    /// <summary>A field-dressed white-tail, cool when it came in.</summary>
    public static TakenAnimal Deer(string? tag, decimal pounds, Sex sex = Sex.Male, params IReadOnlyList<PartKind> parts) =>
        new(Species.WhiteTailDeer, ArrivalState.FieldDressed)
        {
            Tag = tag,
            Sex = sex,
            ArrivalWeight = Weight.FromPounds(pounds),
            Surface = Temperature.FromFahrenheit(38m),
            DiseaseTest = DiseaseTest.NotRequired,
            Parts = parts,
        };

    /// <summary>Livestock, whole.</summary>
    public static TakenAnimal Whole(Species species, string tag, decimal pounds) =>
        new(species, ArrivalState.Whole) { Tag = tag, ArrivalWeight = Weight.FromPounds(pounds) };
}
