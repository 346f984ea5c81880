using System.Globalization;

namespace ProcessorDesk.Trade.Blending;

/// <summary>
/// What is wrong with a wanted block before anything is worked out. Bounds that are each right and only clash with one another
/// are not found here: <see cref="LeastCost"/> names those.
/// </summary>
public static class BlendCheck
{
    /// <summary>More than a shop's cooler holds; it keeps an answer quick.</summary>
    public const int MostMaterials = 40;

    /// <returns>Findings with fields "Block", "Fat.Least", "Materials[0].Fat" and so on; empty where a blend can be looked for.</returns>
    public static IReadOnlyList<Finding> Check(BlendWanted wanted)
    {
        var findings = new List<Finding>();
        if (wanted.Division.CountOf(wanted.Block) < 1)
            findings.Add(new Finding("Block", "The block weighs at least one division of the scale.", wanted.Division.Print(wanted.Block), wanted.Division.ToString()));
        if (wanted.Fat.Most > Proportion.Whole)
            findings.Add(new Finding("Fat.Most", "Fat is at most 100 % of a block.", wanted.Fat.Most.Print(), "100 %"));
        if (wanted.Fat.Least > wanted.Fat.Most)
            findings.Add(new Finding("Fat.Least", "The least fat is not above the most.", wanted.Fat.Least.Print(), wanted.Fat.Most.Print()));
        if (wanted.Materials.Count is < 1 or > MostMaterials)
            findings.Add(new Finding("Materials", string.Create(CultureInfo.InvariantCulture, $"Name one to {MostMaterials} materials."), string.Create(CultureInfo.InvariantCulture, $"{wanted.Materials.Count}")));
        findings.AddRange(wanted.Materials.SelectMany((material, i) =>
            Of(material).Select(found => found with { Field = BlendBound.FieldOf(i, found.Field) })));
        return findings;
    }

    private static IEnumerable<Finding> Of(BlendMaterial material)
    {
        if (material.Fat > Proportion.Whole)
            yield return new Finding(nameof(material.Fat), "Fat is at most 100 % of a meat.", material.Fat.Print(), "100 %");
        if (material.LeastShare > Proportion.Whole)
            yield return new Finding(nameof(material.LeastShare), "A share is at most the whole block.", material.LeastShare.Print(), "100 %");
        if (material.MostShare > Proportion.Whole)
            yield return new Finding(nameof(material.MostShare), "A share is at most the whole block.", material.MostShare.Print(), "100 %");
        if (material.OnHand is { IsNegative: true })
            yield return new Finding(nameof(material.OnHand), "What is on hand is zero or more.");
    }
}
