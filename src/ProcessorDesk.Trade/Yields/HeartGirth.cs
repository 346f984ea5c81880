namespace ProcessorDesk.Trade.Yields;

/// <summary>A white-tailed deer's weights from the girth of its chest behind the foreleg, by published straight lines.</summary>
/// <remarks>
/// Source: SEAFWA 1976, 545 deer; read in the published text (A). The span of 20 to 50 in is from memory (M). The lines
/// explain 69 to 74 % of what was seen, so a single deer may lie well off them.
/// </remarks>
public static class HeartGirth
{
    public const string Source = "SEAFWA 1976, 545 white-tailed deer (69 to 74 % of the variation explained)";

    /// <summary>Inches; from memory.</summary>
    public const decimal LeastInches = 20m;

    /// <summary>Inches; from memory.</summary>
    public const decimal MostInches = 50m;

    /// <param name="inches">Girth in inches, 20 to 50; outside there is a finding and no weight.</param>
    /// <param name="fawn">Whether the deer is in its first year.</param>
    public static GirthEstimate Estimate(decimal inches, bool fawn)
    {
        if (inches is < LeastInches or > MostInches)
            return new GirthEstimate(null, null, new Finding(
                "Girth", "The published lines hold only from 20 to 50 in around the chest. Measure again, or weigh the animal.",
                FormattableString.Invariant($"{inches:0.##} in"), "20 to 50 in", Source));
        return fawn
            ? new GirthEstimate(Weight.FromPounds(5.3003m * inches - 74.1489m), Weight.FromPounds(3.9499m * inches - 55.6158m), null)
            : new GirthEstimate(Weight.FromPounds(6.5520m * inches - 95.0128m), Weight.FromPounds(5.6037m * inches - 94.0982m), null);
    }
}

/// <summary>Weights by girth, or why there are none.</summary>
/// <param name="Live">Null where the girth is outside the span.</param>
/// <param name="Dressed">Field-dressed; null where the girth is outside the span.</param>
/// <param name="Refusal">Null where there are weights.</param>
public sealed record GirthEstimate(Weight? Live, Weight? Dressed, Finding? Refusal);
