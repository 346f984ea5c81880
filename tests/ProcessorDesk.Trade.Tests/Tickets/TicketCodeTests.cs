using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using ProcessorDesk.Trade.Tickets;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Tickets;

[Properties(MaxTest = 1000, Arbitrary = [typeof(TicketCodeTests)])]
public sealed class TicketCodeTests
{
    private const string Symbols = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    private const long Lowest = 10_485_760;
    private const long Highest = 33_554_431;

    public static Arbitrary<TicketCode> Codes() =>
        Gen.Frequency(
            (1, Gen.Constant(TicketCode.First)),
            (1, Gen.Constant(Last)),
            (8, Sizes.Between(Lowest, Highest).Where(number => number % 37 < 32).Select(TicketCode.FromNumber))).ToArbitrary();

    private static TicketCode Last => TicketCode.FromNumber(Enumerable.Range(0, 37).Select(back => Highest - back).First(number => number % 37 < 32));

    [Property]
    public void A_code_reads_back_in_any_dress(TicketCode code)
    {
        var printed = code.Print();

        Assert.Matches("^[A-HJKMNP-TV-Z][0-9A-HJKMNP-TV-Z]{2}-[0-9A-HJKMNP-TV-Z]{3}$", printed);
        foreach (var typed in (string[])[printed, printed.ToLowerInvariant(), printed.Replace("-", ""), $" {printed[..2]} {printed[2..]} ",
                     printed.Replace('1', 'I').Replace('0', 'O'), printed.Replace('1', 'l').Replace('0', 'o')])
            Assert.Equal(code, TicketCode.Parse(typed).Result);
    }

    [Property]
    public void Every_single_wrong_character_of_a_code_is_refused(TicketCode code)
    {
        var symbols = code.Print().Replace("-", "");
        for (var place = 0; place < symbols.Length; place++)
            foreach (var wrong in (Symbols + "U*~$=!?.").Where(symbol => symbol != symbols[place]))
                Assert.False(TicketCode.Parse(symbols[..place] + wrong + symbols[(place + 1)..]).IsGood);
    }

    [Property]
    public void Every_swap_of_neighbours_is_refused_the_check_symbol_included(TicketCode code)
    {
        var symbols = code.Print().Replace("-", "");
        for (var place = 0; place + 1 < symbols.Length; place++)
        {
            var (first, second) = (symbols[place], symbols[place + 1]);
            if (first != second)
                Assert.False(TicketCode.Parse(symbols[..place] + second + first + symbols[(place + 2)..]).IsGood);
        }
    }

    [Property]
    public void The_next_code_is_the_nearest_that_prints_in_letters_and_digits(TicketCode code)
    {
        if (code == Last)
            return;
        var next = code.Next();

        Assert.True(next.Number > code.Number);
        for (var between = code.Number + 1; between < next.Number; between++)
            Assert.InRange(between % 37, 32, 36);
    }

    [Fact]
    public void The_series_starts_with_a_letter_and_ends_with_words()
    {
        Assert.Equal('A', TicketCode.First.Print()[0]);
        Assert.Equal(Lowest + (Lowest % 37 < 32 ? 0 : 37 - Lowest % 37), TicketCode.First.Number);
        Assert.Throws<InvalidOperationException>(() => Last.Next());
    }

    [Fact]
    public void The_series_is_long_enough_for_a_shops_life()
    {
        var codes = Enumerable.Range(0, 37).Count(check => check < 32) * ((Highest - Lowest + 1) / 37);

        Assert.True(codes > 19_000_000);
    }

    [Theory]
    [InlineData(Lowest - 1)]
    [InlineData(Highest + 1)]
    [InlineData(0)]
    [InlineData(-1)]
    public void A_number_outside_the_series_is_no_code(long number) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => TicketCode.FromNumber(number));

    [Fact]
    public void A_number_whose_check_is_no_letter_or_digit_is_no_code()
    {
        var number = Enumerable.Range(0, 37).Select(on => Lowest + on).First(number => number % 37 == 32);

        Assert.Throws<ArgumentOutOfRangeException>(() => TicketCode.FromNumber(number));
    }

    [Theory]
    [InlineData(null, "Type or scan the code on the ticket, for example A0C-7K2.")]
    [InlineData(" - ", "Type or scan the code on the ticket, for example A0C-7K2.")]
    [InlineData("A0C-7K", "A ticket code has six letters and digits, like A0C-7K2. Type it again.")]
    [InlineData("555-123-4567", "A ticket code has six letters and digits, like A0C-7K2. Type it again.")]
    [InlineData("000-000", "\"000-000\" is on no ticket: a letter or digit is wrong or two are swapped. Type it again.")]
    public void What_is_no_code_is_answered_with_what_to_type(string? typed, string words) => Assert.Equal(words, TicketCode.Parse(typed).Problem);

    [Fact]
    public void A_code_never_set_does_not_print()
    {
        Assert.Throws<InvalidOperationException>(() => default(TicketCode).Print());
        Assert.Equal("no ticket", default(TicketCode).ToString());
    }
}
