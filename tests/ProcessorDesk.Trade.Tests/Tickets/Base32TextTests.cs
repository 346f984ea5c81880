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

    [Fact]
    public void Every_check_value_has_its_own_symbol()
    {
        var symbols = Enumerable.Range(0, 37).Select(number => Base32Text.EncodeWithCheck(number)[^1]).ToList();

        Assert.Equal("0123456789ABCDEFGHJKMNPQRSTVWXYZ*~$=U", string.Concat(symbols));
    }
}
