using System.Diagnostics.CodeAnalysis;

namespace ProcessorDesk.Trade.Tickets;

/// <summary>
/// Numbers in base 32 with a check symbol modulo 37: ten digits and the letters less I, L, O and U; reading takes either
/// case, i and l for 1, o for 0, and passes over hyphens and spaces.
/// Source: Crockford, "Base 32", crockford.com/base32.html.
/// </summary>
public static class Base32Text
{
    public const int Base = 32;

    /// <summary>The check value is the number modulo this; every single wrong symbol and every swap of neighbours changes it.</summary>
    public const int CheckModulus = 37;

    /// <summary>The 32 digits, then the five symbols that only a check can be.</summary>
    private const string Symbols = "0123456789ABCDEFGHJKMNPQRSTVWXYZ*~$=U";

    /// <summary>0 to 36; from 32 its symbol is not a digit.</summary>
    public static int CheckValue(long number) => (int)(number % CheckModulus);

    /// <summary>"16J" for 1234; no zeros in front.</summary>
    /// <param name="number">Zero or more.</param>
    public static string Encode(long number)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(number);
        var text = "";
        for (var rest = number; rest > 0 || text.Length == 0; rest /= Base)
            text = Symbols[(int)(rest % Base)] + text;
        return text;
    }

    /// <summary>"16JD" for 1234: the number, then its check symbol.</summary>
    public static string EncodeWithCheck(long number) => Encode(number) + Symbols[CheckValue(number)];

    /// <summary>Eight digits for every five bytes, the highest bits first; zeros in front stay.</summary>
    /// <exception cref="ArgumentException">The bytes do not come in fives.</exception>
    public static string EncodeBytes(ReadOnlySpan<byte> bytes)
    {
        if (bytes.Length % 5 != 0)
            throw new ArgumentException("Five bytes make eight digits; there are some left over.", nameof(bytes));
        var text = "";
        for (var start = 0; start < bytes.Length; start += 5)
        {
            var number = 0L;
            foreach (var one in bytes.Slice(start, 5))
                number = number << 8 | one;
            for (var bits = 35; bits >= 0; bits -= 5)
                text += Symbols[(int)(number >> bits & Base - 1)];
        }

        return text;
    }

    /// <summary>The number of a text whose last symbol is the right check for it.</summary>
    public static bool TryDecodeWithCheck([NotNullWhen(true)] string? text, out long number)
    {
        number = 0;
        var symbols = Canonical(text);
        if (symbols is not { Length: >= 2 and <= 13 })
            return false;
        foreach (var symbol in symbols[..^1])
        {
            var digit = Symbols.IndexOf(symbol, StringComparison.Ordinal);
            if (digit is < 0 or >= Base)
                return false;
            number = number * Base + digit;
        }

        return Symbols.IndexOf(symbols[^1], StringComparison.Ordinal) == CheckValue(number);
    }

    /// <summary>The symbols alone, as they are printed; null where there is nothing.</summary>
    public static string? Canonical(string? text) =>
        text is null
            ? null
            : string.Concat(text.Where(sign => sign != '-' && !char.IsWhiteSpace(sign)).Select(sign => char.ToUpperInvariant(sign) switch
            {
                'I' or 'L' => '1',
                'O' => '0',
                var other => other,
            }));
}
