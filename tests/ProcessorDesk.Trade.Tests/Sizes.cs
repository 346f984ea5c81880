using System.Numerics;
using FsCheck;
using FsCheck.Fluent;

namespace ProcessorDesk.Trade.Tests;

/// <summary>A figure as a scale shows it: so many of its divisions.</summary>
public sealed record Keyed(ScaleDivision Division, long Count)
{
    /// <summary>The figure, worked by decimals alone.</summary>
    public decimal Figure => Count * Division.Step;

    public Weight Weight => Weight.From(Figure, Division.Unit);

    public override string ToString() => $"{Count} × {Division}";
}

/// <summary>A weight, not of necessity on the division, and the shares it is split by.</summary>
public sealed record ToSplit(ScaleDivision Division, Weight Total, long[] Shares)
{
    public override string ToString() => $"{Total.Milligrams} mg at {Division} by {string.Join(":", Shares)}";
}

/// <summary>
/// Sizes that properties are tried on. Each holds zero, one division and the most a person can key, beside the ordinary.
/// </summary>
public static class Sizes
{
    public static readonly ScaleDivision[] Divisions =
    [
        .. new[] { 0.0001m, 0.0005m, 0.001m, 0.002m, 0.005m, 0.01m, 0.02m, 0.05m, 0.1m, 0.2m, 0.5m, 1m }
            .SelectMany(step => new[] { WeightUnit.Pound, WeightUnit.Ounce, WeightUnit.Kilogram }.Select(unit => ScaleDivision.Of(unit, step))),
        .. new[] { 0.001m, 0.01m, 0.1m, 0.5m, 1m, 2m, 5m }.Select(step => ScaleDivision.Of(WeightUnit.Gram, step)),
    ];

    private static readonly long s_most = WeightText.Most.Milligrams;

    public static Arbitrary<Keyed> Keyings() =>
        (from division in Gen.Elements(Divisions)
         from count in Count(division.CountDown(WeightText.Most))
         select new Keyed(division, count)).ToArbitrary();

    public static Arbitrary<ToSplit> Splits() =>
        (from division in Gen.Elements(Divisions)
         from total in Total(division)
         from size in Gen.Choose(1, 8)
         from shares in Gen.ArrayOf(Share, size)
         select new ToSplit(division, total, shares.All(share => share == 0) ? [.. shares[1..], 1] : shares)).ToArbitrary();

    public static Arbitrary<Weight> Weights() => Count(s_most).Select(Weight.FromMilligrams).ToArbitrary();

    public static Arbitrary<Money> Amounts() => Count(MoneyText.Most.Cents).Select(Money.FromCents).ToArbitrary();

    public static Arbitrary<PricePerPound> Rates() =>
        Count(100_000).Select(cents => PricePerPound.FromCents((int)cents)).ToArbitrary();

    public static Arbitrary<Proportion> Percents() =>
        Count(1_000_000).Select(parts => Proportion.FromPartsPerMillion((int)parts)).ToArbitrary();

    /// <summary>Small and large, the ends more often than chance would.</summary>
    public static Gen<long> Count(long most) =>
        Gen.Frequency(
            (1, Gen.Constant(0L)),
            (1, Gen.Constant(1L)),
            (1, Gen.Constant(most)),
            (4, Between(0, Math.Min(most, 5000))),
            (4, Between(0, most)));

    /// <summary>Any whole number from one to the other, both in.</summary>
    public static Gen<long> Between(long least, long most) =>
        from high in Gen.Choose(0, (1 << 30) - 1)
        from low in Gen.Choose(0, (1 << 30) - 1)
        select least + (long)((((BigInteger)high << 30) + low) * ((BigInteger)most - least + 1) >> 60);

    private static Gen<long> Share =>
        Gen.Frequency((1, Gen.Constant(0L)), (1, Gen.Constant(1L)), (3, Between(0, 100)), (2, Between(0, long.MaxValue / 8)));

    /// <summary>On the division, half a division over with what rounding does to it, and anywhere.</summary>
    private static Gen<Weight> Total(ScaleDivision division) =>
        Gen.OneOf(
            Count(division.CountDown(WeightText.Most)).Select(division.FromCount),
            from count in Between(0, 40)
            from off in Between(-2, 2)
            select Weight.FromMilligrams(Math.Max(0, Weight.From((count + 0.5m) * division.Step, division.Unit).Milligrams + off)),
            Count(s_most).Select(Weight.FromMilligrams));
}
