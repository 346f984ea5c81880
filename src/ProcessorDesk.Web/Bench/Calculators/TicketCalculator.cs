using System.Globalization;
using ProcessorDesk.Trade.Tickets;

namespace ProcessorDesk.Web.Bench.Calculators;

/// <summary>Numbers in base 32 with a check symbol, both ways.</summary>
public static class TicketCalculator
{
    private const decimal MostNumber = 1_000_000_000_000_000m;

    private static readonly Field<long> s_code = new("code", "Code", "symbols of base 32 and a check symbol; either case, hyphens and blanks passed over", Decoded)
    {
        IsRequired = false,
        Example = "16JD",
        Hint = "A code or a number, not both",
    };

    private static readonly Field<long> s_number = new("number", "Number", "a whole number, 0 to 1,000,000,000,000,000", Whole) { IsRequired = false, IsNumber = true, Example = "1234" };

    public static Calculator Calculator { get; } = new(
        "ticket-code", "Ticket codes", "The code of a number, or the number of a code. One wrong symbol, or two neighbours swapped, is found out.",
        [s_code, s_number],
        [
            Figure.Number("number", "Number", ""),
            Figure.Text("code", "Code", "with its check symbol, without hyphen"),
            new("isTicket", "Is a ticket of the desk", FigureKind.Flag, "six letters and digits that the desk may print on a ticket; not that it did"),
        ],
        ["A code that reads well may still belong to no ticket here: scan it at the desk."],
        "code=16JD",
        Work);

    private static Outcome Work(Entries entries)
    {
        if ((entries.Maybe(s_code) is null) == (entries.Maybe(s_number) is null))
            return Refusal.Bad(s_code.Name, "Give a code or a number, one of the two.");
        var number = entries.Maybe(s_code) ?? entries.Maybe(s_number)!.Value;
        var code = Base32Text.EncodeWithCheck(number);
        return new Answer(
        [
            $"{number.ToString(CultureInfo.InvariantCulture)} in base {Base32Text.Base} = {Base32Text.Encode(number)}",
            $"{number.ToString(CultureInfo.InvariantCulture)} modulo {Base32Text.CheckModulus} = {Base32Text.CheckValue(number)}, check symbol {code[^1]}",
        ])
        {
            Published = [("Ten digits and the letters less I, L, O and U; check symbol modulo 37", "Crockford, \"Base 32\", crockford.com/base32.html")],
            Figures = { ["number"] = (decimal)number, ["code"] = code, ["isTicket"] = TicketCode.Parse(code).IsGood },
        };
    }

    private static Taken<long> Decoded(string text) => Base32Text.TryDecodeWithCheck(text, out var number)
        ? Take.Good<long>(number)
        : Take.Bad<long>("A letter or digit is wrong or two are swapped. Type it again.");

    private static Taken<long> Whole(string text) => PlainNumber.Read(text, 0m, MostNumber).Then(number =>
        decimal.Truncate(number) == number ? Take.Good<long>(decimal.ToInt64(number)) : Take.Bad<long>("Give a whole number."));
}
