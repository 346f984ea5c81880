namespace ProcessorDesk.Web.Pages.OwnersPage;

/// <summary>An animal as its owner knows it: by kind and by its official tag.</summary>
public sealed record OwnersAnimal(SharedAnimal Animal, Portion Portion, DateTime? HungAt, DiseaseTest Test, IReadOnlyList<OwnersPart> Parts)
{
    /// <summary>"White-tail deer, tag TX-0417", "Beef, tag 118, 1/2 of it".</summary>
    public string Name =>
        Wording.Of(Animal.Species) + (Animal.Tag is { } tag ? $", tag {tag}" : "") + (Animal.Share.Fraction == Ratio.One ? "" : $", {Animal.Share.Fraction} of it");

    /// <summary>"Your white-tail deer", "Your 2 lambs and elk" stay readable as "Your animals".</summary>
    public static (string Words, bool AreMany) Together(IReadOnlyList<OwnersAnimal> animals) => animals switch
    {
        [] => ("Your order", false),
        [var one] when one.Animal.Share.Fraction == Ratio.One => ($"Your {Plain(one.Animal.Species)}", false),
        [var one] => ($"Your {PortionOf(one.Portion)} of the {Plain(one.Animal.Species)}", false),
        _ when animals.All(one => one.Animal.Species is Species.WhiteTailDeer or Species.MuleDeer) => ($"Your {animals.Count} deer", true),
        _ => ($"Your {animals.Count} animals", true),
    };

    private static string Plain(Species species) => Wording.Of(species).ToLowerInvariant();

    private static string PortionOf(Portion portion) => portion switch
    {
        Portion.Whole => "share",
        Portion.Side => "side",
        Portion.Quarter => "quarter",
        Portion.Part => "share",
    };
}

/// <summary>Something of the animal that goes back as itself.</summary>
public sealed record OwnersPart(PartKind Kind, DateTime? GivenAt);
