namespace ProcessorDesk.Trade.Tickets;

/// <summary>The code on a ticket: "A0C-7K2", five base-32 symbols and a check symbol.</summary>
/// <remarks>
/// Range: 10 × 32⁴ to 32⁵ − 1, so that the first symbol is a letter and a code is never read as a job number, a tag or a
/// telephone; numbers whose check symbol would not be a letter or digit are left out. Granularity: one. Equality: same
/// number. Not ordered. The default is not a code; printing it throws <see cref="InvalidOperationException"/>.
/// A code typed with one wrong symbol, or with two neighbours swapped, is refused.
/// </remarks>
public readonly record struct TicketCode
{
    private const int Length = 6;
    private const long Lowest = 10L * Base32Text.Base * Base32Text.Base * Base32Text.Base * Base32Text.Base;
    private const long Highest = (long)Base32Text.Base * Base32Text.Base * Base32Text.Base * Base32Text.Base * Base32Text.Base - 1;

    private TicketCode(long number) => Number = number;

    /// <summary>The number the symbols stand for, without the check.</summary>
    public long Number { get; private init; }

    public static TicketCode First => AtOrAfter(Lowest);

    /// <exception cref="ArgumentOutOfRangeException">No ticket has this number.</exception>
    public static TicketCode FromNumber(long number) =>
        IsCode(number) ? new TicketCode(number) : throw new ArgumentOutOfRangeException(nameof(number), number, "No ticket has this number.");

    /// <summary>The code that follows in the series.</summary>
    /// <exception cref="InvalidOperationException">It was the last of more than twenty million.</exception>
    public TicketCode Next() => AtOrAfter(Known() + 1);

    /// <summary>"A0C-7K2".</summary>
    public string Print()
    {
        var symbols = Base32Text.EncodeWithCheck(Known());
        return $"{symbols[..3]}-{symbols[3..]}";
    }

    /// <summary>Reads a code as typed or scanned: either case, hyphens and spaces anywhere or nowhere, i and l as 1, o as 0.</summary>
    public static Parsed<TicketCode> Parse(string? text)
    {
        var symbols = Base32Text.Canonical(text);
        if (string.IsNullOrEmpty(symbols))
            return Parsed<TicketCode>.Bad("Type or scan the code on the ticket, for example A0C-7K2.");
        if (symbols.Length != Length)
            return Parsed<TicketCode>.Bad("A ticket code has six letters and digits, like A0C-7K2. Type it again.");
        return Base32Text.TryDecodeWithCheck(symbols, out var number) && IsCode(number)
            ? Parsed<TicketCode>.Good(new TicketCode(number))
            : Parsed<TicketCode>.Bad($"{NumberText.Quote(text)} is on no ticket: a letter or digit is wrong or two are swapped. Type it again.");
    }

    public override string ToString() => Number == 0 ? "no ticket" : Print();

    private static bool IsCode(long number) =>
        number is >= Lowest and <= Highest && Base32Text.CheckValue(number) < Base32Text.Base;

    private static TicketCode AtOrAfter(long number)
    {
        while (!IsCode(number))
            number = number < Highest ? number + 1 : throw new InvalidOperationException("The series of tickets is used up.");
        return new TicketCode(number);
    }

    private long Known() => IsCode(Number) ? Number : throw new InvalidOperationException("This ticket code was never set.");
}
