namespace ProcessorDesk.Trade.Yields;

/// <summary>A white-tailed deer's weights from the girth of its chest behind the foreleg, by published straight lines.</summary>
/// <remarks>
/// Source: SEAFWA 1976, 545 deer; read in the published text (A). The span of 20 to 50 in is from memory (M). The lines
/// explain 69 to 74 % of what was seen, so a single deer may lie well off them.
/// </remarks>
public static class HeartGirth
{
    public const string Source = "SEAFWA 1976, 545 white-tailed deer (69 to 74 % of the variation explained)";
    public const string Mark = "A";

    /// <summary>Inches; from memory.</summary>
    public const decimal LeastInches = 20m;

    /// <summary>Inches; from memory.</summary>
    public const decimal MostInches = 50m;

    /// <summary>Live and field-dressed weight.</summary>
    /// <param name="inches">Girth in inches, 20 to 50; outside there is a finding and no weight.</param>
    /// <param name="fawn">Whether the deer is in its first year.</param>
    public static GirthEstimate Estimate(decimal inches, bool fawn)
    {
        if (inches is < LeastInches or > MostInches)
            return new GirthEstimate(null, null, new Finding(
                "Girth", "The published lines hold only from 20 to 50 in around the chest. Measure again, or weigh the animal.",
                FormattableString.Invariant($"{inches:0.##} in"), "20 to 50 in", Source), []);
        var (live, dressed) = fawn ? (GirthLine.FawnLive, GirthLine.FawnDressed) : (GirthLine.AdultLive, GirthLine.AdultDressed);
        return new GirthEstimate(
            live.At(inches), dressed.At(inches), null, ["live: " + live.Working(inches), "field-dressed: " + dressed.Working(inches)]);
    }
}

/// <summary>Weights by girth, or why there are none.</summary>
/// <param name="Live">Null where the girth is outside the span.</param>
/// <param name="Dressed">Field-dressed; null where the girth is outside the span.</param>
/// <param name="Refusal">Null where there are weights.</param>
/// <param name="Working">The arithmetic, a line a step; empty where there are no weights.</param>
public sealed record GirthEstimate(Weight? Live, Weight? Dressed, Finding? Refusal, IReadOnlyList<string> Working);
