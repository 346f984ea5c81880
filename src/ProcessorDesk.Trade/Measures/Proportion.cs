using System.Globalization;

namespace ProcessorDesk.Trade;

/// <summary>A part of a whole in parts per million; a percent as people type it.</summary>
/// <remarks>
/// Range: zero to 2,147,483,647 ppm (over 100 % has meaning for a mark-up). Granularity: one part per million, which is
/// 0.0001 %. Equality and order are those of the count. The default is zero. Published limits are not held here but as
/// exact <see cref="Ratio"/>s.
/// </remarks>
public readonly record struct Proportion : IComparable<Proportion>
{
    private Proportion(int partsPerMillion) => PartsPerMillion = partsPerMillion;

    public int PartsPerMillion { get; private init; }

    public static Proportion Zero => default;

    public static Proportion Whole => new(1_000_000);

    public bool IsZero => PartsPerMillion == 0;

    public decimal Percent => PartsPerMillion / 10_000m;

    public static Proportion FromPartsPerMillion(int partsPerMillion)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(partsPerMillion);
        return new Proportion(partsPerMillion);
    }

    /// <summary>To the nearest 0.0001 %, halves away from zero.</summary>
    public static Proportion FromPercent(decimal percent) =>
        FromPartsPerMillion(checked((int)Rounding.ToLong(percent * 10_000m)));

    public Ratio ToRatio() => Ratio.Of(PartsPerMillion, 1_000_000);

    public static Proportion operator +(Proportion left, Proportion right) =>
        new(left.PartsPerMillion + right.PartsPerMillion);

    public static bool operator <(Proportion left, Proportion right) => left.PartsPerMillion < right.PartsPerMillion;

    public static bool operator >(Proportion left, Proportion right) => left.PartsPerMillion > right.PartsPerMillion;

    public static bool operator <=(Proportion left, Proportion right) => left.PartsPerMillion <= right.PartsPerMillion;

    public static bool operator >=(Proportion left, Proportion right) => left.PartsPerMillion >= right.PartsPerMillion;

    public int CompareTo(Proportion other) => PartsPerMillion.CompareTo(other.PartsPerMillion);

    /// <summary>"6.25 %", "15 %".</summary>
    public string Print() => Percent.ToString("0.####", CultureInfo.InvariantCulture) + " %";

    public override string ToString() => Print();
}
