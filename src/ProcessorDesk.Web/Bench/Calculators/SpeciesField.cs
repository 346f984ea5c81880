namespace ProcessorDesk.Web.Bench.Calculators;

/// <summary>The animals a shop takes in, by the bench's codes. "deer" is white-tail and mule deer; its figures are white-tail's.</summary>
internal static class SpeciesField
{
    public static Field<Species> Any { get; } = Fields.Choice(
        "species", "Animal",
        ("deer", "Deer", Species.WhiteTailDeer), ("elk", "Elk", Species.Elk), ("moose", "Moose", Species.Moose), ("pronghorn", "Pronghorn", Species.Pronghorn),
        ("beef", "Beef", Species.Beef), ("hog", "Hog", Species.Hog), ("lamb", "Lamb", Species.Lamb), ("goat", "Goat", Species.Goat),
        ("bear", "Bear", Species.Bear), ("boar", "Wild boar", Species.WildBoar), ("bison", "Bison", Species.Bison));
}
