using FsCheck.Xunit;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Measures;

[Properties(MaxTest = 1000, Arbitrary = [typeof(Sizes)])]
public sealed class PhTests
{
    [Theory]
    [InlineData("5.3", 530)]
    [InlineData("5.30", 530)]
    [InlineData(" pH 5.3 ", 530)]
    [InlineData("ph5.3", 530)]
    [InlineData("PH 6", 600)]
    [InlineData("5.301", 531)]
    [InlineData("5.3000000001", 531)]
    [InlineData("5.309", 531)]
    [InlineData("3", 300)]
    [InlineData("3.00", 300)]
    [InlineData("8.00", 800)]
    public void What_a_meter_shows_is_read_and_never_sourer_than_it_shows(string typed, int hundredths) =>
        Assert.Equal(hundredths, PhText.Parse(typed).Result.Hundredths);

    [Theory]
    [InlineData("2.99", "between 3.00 and 8.00")]
    [InlineData("2.999", "between 3.00 and 8.00")]
    [InlineData("8.01", "between 3.00 and 8.00")]
    [InlineData("8.0001", "between 3.00 and 8.00")]
    [InlineData("53", "between 3.00 and 8.00")]
    [InlineData("99999999999999999999999999", "between 3.00 and 8.00")]
    [InlineData("0", "between 3.00 and 8.00")]
    [InlineData("5..3", "does not read as a pH")]
    [InlineData("", "Type the pH")]
    [InlineData("  ", "Type the pH")]
    [InlineData(null, "Type the pH")]
    [InlineData("5,3", "does not read")]
    [InlineData("-5.3", "does not read")]
    [InlineData("5 1/3", "does not read")]
    [InlineData("sour", "does not read")]
    [InlineData("pH", "does not read")]
    public void What_cannot_be_is_answered_in_words(string? typed, string words) =>
        Assert.Contains(words, PhText.Parse(typed).Problem, StringComparison.Ordinal);

    [Property]
    public void What_is_printed_reads_back_and_keeps_its_order(Keyed keyed)
    {
        var ph = Ph.FromHundredths(300 + (int)(keyed.Count % 501));
        var other = Ph.FromHundredths(300 + (int)(keyed.Count / 7 % 501));

        Assert.Equal(ph, PhText.Parse(ph.Print()).Result);
        Assert.Equal(ph.Hundredths.CompareTo(other.Hundredths), ph.CompareTo(other));
        Assert.Equal((ph.Hundredths < other.Hundredths, ph.Hundredths <= other.Hundredths), (ph < other, ph <= other));
        Assert.Equal((ph.Hundredths > other.Hundredths, ph.Hundredths >= other.Hundredths), (ph > other, ph >= other));
    }

    [Fact]
    public void It_is_printed_with_both_decimals()
    {
        Assert.Equal(("pH 5.30", "pH 0.00", "pH 14.00"), (Ph.FromHundredths(530).Print(), default(Ph).ToString(), Ph.FromHundredths(1400).Print()));
        Assert.Throws<ArgumentOutOfRangeException>(() => Ph.FromHundredths(1401));
        Assert.Throws<ArgumentOutOfRangeException>(() => Ph.FromHundredths(-1));
    }
}
