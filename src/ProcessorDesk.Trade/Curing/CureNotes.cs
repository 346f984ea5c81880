namespace ProcessorDesk.Trade.Curing;

/// <summary>What a person should know beside a cure check, without its being held against the cure.</summary>
internal static class CureNotes
{
    public static IReadOnlyList<Finding> Of(IReadOnlyList<CureAmount> cures, Ratio nitrite)
    {
        var notes = cures.SelectMany(cure => Doubts(cure.Nitrite, cure.Nitrate)).ToList();
        var (cap, effect) = (CureLimits.Find("finished.nitrite"), CureLimits.Find("preserving.nitrite.effect"));
        if (nitrite > cap.Figure)
            notes.Add(new Finding("", $"However much goes in, finished product holds at most {PpmText.Print(cap)} of nitrite, as sodium nitrite.", "", PpmText.Print(cap), cap.Source));
        if (nitrite.Sign > 0 && nitrite < effect.Figure)
            notes.Add(new Finding("", $"Under {PpmText.Print(effect)} nitrite has little preserving effect.", PpmText.Print(nitrite.PartsPerMillion, effect), PpmText.Print(effect), effect.Source));
        return notes;
    }

    /// <summary>Strengths that read like a fraction typed for a percent.</summary>
    public static IEnumerable<Finding> Doubts(Proportion nitrite, Proportion nitrate)
    {
        if (CureStrength.Doubt(nitrite) is { } first)
            yield return first;
        if (CureStrength.Doubt(nitrate) is { } second)
            yield return second with { Field = "Nitrate" };
    }
}
