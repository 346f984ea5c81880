using ProcessorDesk.Trade.Curing;

namespace ProcessorDesk.Trade.Formulas;

/// <summary>What a product is made of: lean and added fat, which are the meat block, and what is added to the block.</summary>
/// <param name="LeanShare">The owner's lean as a part of the meat block; the rest of it is added fat.</param>
/// <param name="IsCured">The product is a cured one: without cure it is not made.</param>
public sealed record Formula(string Name, Proportion LeanShare, bool IsCured, IReadOnlyList<FormulaLine> Lines)
{
    /// <summary>Casings and other things that go by the piece; they are no part of the weight.</summary>
    public IReadOnlyList<PieceLine> Pieces { get; init; } = [];

    /// <summary>Everything that is not meat as a part of the meat block, exactly.</summary>
    public Ratio Additions => Lines.Aggregate(Ratio.Zero, (sum, line) => sum + line.OfMeatBlock);

    /// <summary>What the cure is reckoned on, where lean and added fat are one: more than one where a line counts as meat.</summary>
    public Ratio CureBase => Lines.Where(line => line.InMeatBlock).Aggregate(Ratio.One, (sum, line) => sum + line.OfMeatBlock);

    /// <summary>Ingoing nitrite as a part of what the cure is reckoned on, exactly.</summary>
    public Ratio Nitrite => Lines.Aggregate(Ratio.Zero, (sum, line) => sum + line.OfMeatBlock * line.Nitrite.ToRatio()) / CureBase;

    /// <summary>Ingoing nitrate as a part of what the cure is reckoned on, exactly.</summary>
    public Ratio Nitrate => Lines.Aggregate(Ratio.Zero, (sum, line) => sum + line.OfMeatBlock * line.Nitrate.ToRatio()) / CureBase;

    /// <summary>One kind of accelerator as a part of what the cure is reckoned on, exactly.</summary>
    public Ratio Accelerator(AcceleratorKind kind) =>
        Lines.Where(line => line.Accelerator == kind).Aggregate(Ratio.Zero, (sum, line) => sum + line.OfMeatBlock) / CureBase;

    /// <summary>What is wrong with the formula as written, before anything is weighed; empty where it can be made.</summary>
    /// <returns>Findings with fields "LeanShare", "Lines", "Lines[0].Nitrite" and so on.</returns>
    public IReadOnlyList<Finding> Check()
    {
        var findings = new List<Finding>();
        if (LeanShare.IsZero || LeanShare > Proportion.Whole)
            findings.Add(new Finding(nameof(LeanShare), "The lean share is above 0 and at most 100 % of the meat block.", LeanShare.Print(), "100 %"));
        for (var i = 0; i < Lines.Count; i++)
            findings.AddRange(CheckLine(Lines[i], FormattableString.Invariant($"Lines[{i}]")));

        if (IsCured && Nitrite.IsZero && Nitrate.IsZero)
            findings.Add(new Finding(nameof(Lines), "This product is cured, and nothing in it holds any cure. Add the cure.", "0 ppm", "", CureLimits.ComminutedNitrite.Source));
        if (!IsCured && Lines.FirstOrDefault(line => line.HoldsCure) is { } cured)
            findings.Add(new Finding(nameof(IsCured), $"{cured.Name} holds cure: mark the product as cured.", cured.Nitrite.Print()));
        findings.AddRange(Past(Nitrite, CureLimits.ComminutedNitrite));
        findings.AddRange(Past(Nitrate, CureLimits.ComminutedNitrate));
        foreach (var kind in Enum.GetValues<AcceleratorKind>())
            findings.AddRange(CheckAccelerator(kind));
        return findings;
    }

    private IEnumerable<Finding> CheckAccelerator(AcceleratorKind kind)
    {
        var (part, limit) = (Accelerator(kind), CureRule.AcceleratorLimit(kind));
        var (ppm, allowed) = (PpmText.PrintPast(part.PartsPerMillion, limit), $"{PpmText.Print(limit)} ({limit.AsPrinted})");
        if (part > limit.Figure)
            yield return new Finding(nameof(Lines), $"Too much accelerator in the formula: {ppm}, and the most is {allowed}.", ppm, allowed, limit.Source);
        if (!part.IsZero && Nitrite.IsZero && Nitrate.IsZero)
            yield return new Finding(nameof(Lines), "An accelerator goes in only with a cure.", ppm, allowed, limit.Source);
    }

    private static IEnumerable<Finding> CheckLine(FormulaLine line, string field)
    {
        if (line.OfMeatBlock.Sign < 0)
            yield return new Finding($"{field}.{nameof(line.OfMeatBlock)}", $"{line.Name} is zero or more of the meat block.");
        if (line.IsCure && !line.HoldsCure)
            yield return new Finding($"{field}.{nameof(line.Nitrite)}", $"{line.Name} is a cure and states no nitrite or nitrate. Copy its strength from the label.", "0 %");
        foreach (var finding in CureStrength.Check(line.Nitrite, line.Nitrate))
            yield return finding with { Field = $"{field}.{finding.Field}" };
        if (line.Nitrite + line.Nitrate <= Proportion.Whole && line.Stated > Proportion.Whole)
            yield return new Finding($"{field}.{nameof(line.Salt)}", $"Salt, fat, water and cure in {line.Name} are together at most 100 % of it.", line.Stated.Print(), "100 %");
    }

    private static IEnumerable<Finding> Past(Ratio found, CureLimit limit)
    {
        if (found > limit.Figure)
        {
            var ppm = PpmText.PrintPast(found.PartsPerMillion, limit);
            var allowed = $"{PpmText.Print(limit)} ({limit.AsPrinted})";
            yield return new Finding(nameof(Lines), $"Too much cure in the formula: {ppm}, and the most is {allowed}.", ppm, allowed, limit.Source);
        }
    }
}
