using System.Globalization;

namespace ProcessorDesk.Trade.Curing;

/// <summary>
/// What a cure check has to say about the accelerator. Pumped bacon is prescribed 550 ppm of a sodium salt, compared to the whole
/// ppm it is printed in; everywhere else an accelerator may be left out, has a limit, and goes in only with a cure.
/// </summary>
internal static class AcceleratorFindings
{
    private const string Field = "Accelerator";

    /// <param name="isWithoutCure">Nothing in it holds nitrite or nitrate.</param>
    public static IEnumerable<Finding> Of(CureRule rule, CureAccelerator? accelerator, bool isWithoutCure)
    {
        var ppm = accelerator?.PartsPerMillion ?? 0m;
        ArgumentOutOfRangeException.ThrowIfNegative(ppm, nameof(accelerator));
        var isNone = accelerator is null || ppm == 0m;
        if (rule.PrescribedAccelerator is { } prescribed)
        {
            var isAcid = !isNone && accelerator!.Kind == AcceleratorKind.Acid;
            if (isAcid || decimal.Round(ppm, 0, MidpointRounding.AwayFromZero) != prescribed.PartsPerMillion)
                yield return NotPrescribed(prescribed, ppm, isNone, isAcid);
        }
        else if (!isNone)
        {
            var limit = CureRule.AcceleratorLimit(accelerator!.Kind);
            if (ppm > limit.PartsPerMillion)
                yield return new Finding(Field, $"Too much accelerator: {Print(ppm)}, and the most is {CureFindings.Allowed(limit)}.", Print(ppm), CureFindings.Allowed(limit), limit.Source);
            if (isWithoutCure)
                yield return new Finding(Field, "An accelerator goes in only with a cure.", Print(ppm), CureFindings.Allowed(limit), limit.Source);
        }
    }

    private static Finding NotPrescribed(CureLimit prescribed, decimal ppm, bool isNone, bool isAcid)
    {
        var found = isNone ? "there is none" : isAcid ? $"this is {Print(ppm)} of an acid" : $"this is {Print(ppm)}";
        return new Finding(Field, $"Pumped bacon is cured with {prescribed.AsPrinted}, and {found}.", Print(ppm), prescribed.AsPrinted, prescribed.Source);
    }

    private static string Print(decimal ppm) => ppm.ToString("#,0.####", CultureInfo.InvariantCulture) + " ppm";
}
