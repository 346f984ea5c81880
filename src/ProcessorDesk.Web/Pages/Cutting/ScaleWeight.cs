using ProcessorDesk.Records;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Web.Pages.Cutting;

/// <summary>One reading at the bench, gross and tare on its division.</summary>
public sealed record ScaleWeight(Weight Gross, Weight Tare)
{
    // A slipped point makes a figure about ten times the one before. The last lug is often half empty, so asking begins a little under that.
    private static readonly Ratio s_oddTimes = Ratio.Of(8, 1);

    public Weight Net => Gross - Tare;

    /// <summary>What can't be so, in words beside the field; null where it can.</summary>
    /// <param name="animals">What the animals in it weigh together; null where one was not weighed.</param>
    public string? Impossible(Weight? animals, ScaleDivision division) =>
        Gross < Tare
            ? $"{division.Print(Gross)} is less than the empty lug's {division.Print(Tare)}. Weigh the full lug again."
        : Net.IsZero
            ? "Nothing lies on the scale. Type what it shows with the meat on it."
        : animals is { } whole && Net > whole
            ? $"{division.Print(Net)} net is more than the animal's {division.Print(whole)}. Type the weight again."
            : null;

    /// <summary>What looks like a slipped point beside the weight of the same kind before it; null where it does not.</summary>
    public string? Odd(Weight? before, ScaleDivision division) =>
        before is not { IsPositive: true } last ? null
        : Net >= s_oddTimes.Times(last) ? $"{division.Print(Net)} net is many times the last one, {division.Print(last)}. Type it again, or say that it is right."
        : null;

    /// <summary>Kinds a hand books at the table, the commonest first.</summary>
    public static IReadOnlyList<WeighInKind> Kinds { get; } =
        [WeighInKind.LeanTrim, WeighInKind.FatTrim, WeighInKind.Bone, WeighInKind.Discard, WeighInKind.CutPack];

    /// <summary>Kinds that stay in their lug and go on as meat; the others are emptied out at once and only lend its tare.</summary>
    public static bool StaysInLug(WeighInKind kind) => kind is WeighInKind.LeanTrim or WeighInKind.FatTrim;
}
