using System.Globalization;

namespace ProcessorDesk.Trade.Blending;

/// <summary>One bound on a block.</summary>
/// <param name="Material">Which material it binds; not read for the bounds on fat.</param>
/// <param name="Part">The bound as a part of the block: of its fat, or of its weight.</param>
internal sealed record BlendBound(BlendBoundKind Kind, int Material, Ratio Part)
{
    private const int NoMaterial = -1;

    /// <summary>Every bound of a wanted block that binds at all.</summary>
    public static IEnumerable<BlendBound> Of(BlendWanted wanted)
    {
        yield return new BlendBound(BlendBoundKind.FatMost, NoMaterial, wanted.Fat.Most.ToRatio());
        yield return new BlendBound(BlendBoundKind.FatLeast, NoMaterial, wanted.Fat.Least.ToRatio());
        var block = KeyedFigure.InDivisions(wanted.Block, wanted.Division);
        for (var i = 0; i < wanted.Materials.Count; i++)
        {
            var material = wanted.Materials[i];
            if (!material.LeastShare.IsZero)
                yield return new BlendBound(BlendBoundKind.LeastShare, i, material.LeastShare.ToRatio());
            if (material.MostShare < Proportion.Whole)
                yield return new BlendBound(BlendBoundKind.MostShare, i, material.MostShare.ToRatio());
            if (material.OnHand is { } stock && KeyedFigure.InDivisions(stock, wanted.Division) is var onHand && onHand < block)
                yield return new BlendBound(BlendBoundKind.OnHand, i, onHand / block);
        }
    }

    public bool IsOnFat => Material == NoMaterial;

    /// <summary>How much it leaves to choose: zero for a bound that binds nothing, one for all of the block.</summary>
    public Ratio Tightness => Kind is BlendBoundKind.LeastShare or BlendBoundKind.FatLeast ? Part : Ratio.One - Part;

    /// <summary>The input it stands in: "Fat.Most", "Materials[1].OnHand".</summary>
    public string Field => Kind switch
    {
        BlendBoundKind.FatMost => "Fat.Most",
        BlendBoundKind.FatLeast => "Fat.Least",
        BlendBoundKind.LeastShare => FieldOf(Material, nameof(BlendMaterial.LeastShare)),
        BlendBoundKind.MostShare => FieldOf(Material, nameof(BlendMaterial.MostShare)),
        BlendBoundKind.OnHand => FieldOf(Material, nameof(BlendMaterial.OnHand)),
    };

    public static string FieldOf(int material, string name) => string.Create(CultureInfo.InvariantCulture, $"Materials[{material}].{name}");

    /// <summary>"Pork trim at most 40 % of the block", "Beef 30.00 lb on hand (20 %)".</summary>
    public string Words(BlendWanted wanted) => Kind switch
    {
        BlendBoundKind.FatMost => $"fat at most {wanted.Fat.Most.Print()}",
        BlendBoundKind.FatLeast => $"fat at least {wanted.Fat.Least.Print()}",
        BlendBoundKind.LeastShare => $"{Name(wanted)} at least {PercentWords.Down(Part)} of the block",
        BlendBoundKind.MostShare => $"{Name(wanted)} at most {PercentWords.Down(Part)} of the block",
        BlendBoundKind.OnHand => $"{Name(wanted)} {wanted.Division.Print(wanted.Materials[Material].OnHand!.Value)} on hand, {PercentWords.Down(Part)} of the block",
    };

    private string Name(BlendWanted wanted) => wanted.Materials[Material].Name;
}
