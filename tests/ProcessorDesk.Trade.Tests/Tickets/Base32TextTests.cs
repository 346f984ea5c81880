using ProcessorDesk.Trade.Tickets;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Tickets;

/// <summary>Source of the expected texts: the published tests of libraries for Crockford's base 32 with its check symbol.</summary>
public sealed class Base32TextTests
{
    [Theory]
    [InlineData(0, "00")]
    [InlineData(1234, "16JD")]
    [InlineData(123456, "3RJ0R")]
    public void Published_numbers_encode_with_their_check(long number, string text)
    {
        Assert.Equal(text, Base32Text.EncodeWithCheck(number));
        Assert.True(Base32Text.TryDecodeWithCheck(text, out var read));
        Assert.Equal(number, read);
    }

    [Theory]
    [InlineData("16JE")]
    [InlineData("61JD")]
    [InlineData("16UD")]
    [InlineData("D")]
    [InlineData("")]
    [InlineData(null)]
    [InlineData("16J!")]
    [InlineData("ZZZZZZZZZZZZZZZZZZZZ")]
    public void A_wrong_check_or_symbol_is_refused(string? text) => Assert.False(Base32Text.TryDecodeWithCheck(text, out _));

    [Theory]
    [InlineData("16jd")]
    [InlineData("I6JD")]
    [InlineData("l6-jd")]
    [InlineData(" 16 JD ")]
    public void Case_hyphens_spaces_and_look_alikes_are_read_over(string text)
    {
        Assert.True(Base32Text.TryDecodeWithCheck(text, out var number));
        Assert.Equal(1234, number);
    }

    /// <summary>The same five bits to a digit as in RFC 4648, whose test vectors in its own alphabet are these (section 10).</summary>
    [Theory]
    [InlineData("", "")]
    [InlineData("fooba", "MZXW6YTB")]
    [InlineData("\0\0\0\0\0", "AAAAAAAA")]
    [InlineData("foobafooba", "MZXW6YTBMZXW6YTB")]
    public void Bytes_are_encoded_five_bits_at_a_time(string bytes, string inTheOtherAlphabet)
    {
        var expected = inTheOtherAlphabet.Select(letter =>
            "0123456789ABCDEFGHJKMNPQRSTVWXYZ"["ABCDEFGHIJKLMNOPQRSTUVWXYZ234567".IndexOf(letter, StringComparison.Ordinal)]);

        Assert.Equal(string.Concat(expected), Base32Text.EncodeBytes(System.Text.Encoding.ASCII.GetBytes(bytes)));
    }

    [Fact]
    public void Bytes_that_do_not_come_in_fives_are_not_encoded() => Assert.Throws<ArgumentException>(() => Base32Text.EncodeBytes(new byte[16]));

    [Fact]
    public void Every_check_value_has_its_own_symbol()
    {
        var symbols = Enumerable.Range(0, 37).Select(number => Base32Text.EncodeWithCheck(number)[^1]).ToList();

        Assert.Equal("0123456789ABCDEFGHJKMNPQRSTVWXYZ*~$=U", string.Concat(symbols));
    }
}
