using System.Globalization;

namespace ProcessorDesk.Trade;

/// <summary>An amount of money in whole cents.</summary>
/// <remarks>
/// Range: a signed 64-bit count of cents, the range of its column; negative for a credit. Granularity: one cent.
/// Equality and order are those of the count. The default is zero. Overflow throws.
/// </remarks>
public readonly record struct Money : IComparable<Money>
{
    private Money(long cents) => Cents = cents;

    public long Cents { get; private init; }

    public static Money Zero => default;

    public bool IsZero => Cents == 0;

    public bool IsNegative => Cents < 0;

    public decimal Dollars => Cents / 100m;

    public static Money FromCents(long cents) => new(cents);

    /// <summary>To the nearest cent, halves away from zero.</summary>
    public static Money FromDollars(decimal dollars) => new(Rounding.ToLong(dollars * 100m));

    public static Money operator +(Money left, Money right) => new(left.Cents + right.Cents);

    public static Money operator -(Money left, Money right) => new(left.Cents - right.Cents);

    public static Money operator -(Money money) => new(-money.Cents);

    /// <summary>The price of a count of pieces.</summary>
    public static Money operator *(Money each, int count) => new(each.Cents * count);

    public static bool operator <(Money left, Money right) => left.Cents < right.Cents;

    public static bool operator >(Money left, Money right) => left.Cents > right.Cents;

    public static bool operator <=(Money left, Money right) => left.Cents <= right.Cents;

    public static bool operator >=(Money left, Money right) => left.Cents >= right.Cents;

    public static Money Sum(IEnumerable<Money> amounts) => amounts.Aggregate(Zero, (sum, amount) => sum + amount);

    public int CompareTo(Money other) => Cents.CompareTo(other.Cents);

    /// <summary>"$1,234.50", "-$3.00".</summary>
    public string Print() =>
        (Cents < 0 ? "-$" : "$") + Math.Abs(Dollars).ToString("N2", CultureInfo.InvariantCulture);

    public override string ToString() => Print();
}
