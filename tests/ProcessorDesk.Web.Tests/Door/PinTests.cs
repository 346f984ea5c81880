using Microsoft.Extensions.Time.Testing;
using ProcessorDesk.Web.Door;
using Xunit;

namespace ProcessorDesk.Web.Tests.Door;

public sealed class PinTests
{
    [Theory]
    [InlineData(null, "Type a PIN of four to eight figures.")]
    [InlineData("", "Type a PIN of four to eight figures.")]
    [InlineData("258", "A PIN has four to eight figures.")]
    [InlineData("2580", null)]
    [InlineData("25802580", null)]
    [InlineData("258025802", "A PIN has four to eight figures.")]
    [InlineData("25a0", "A PIN has figures only.")]
    [InlineData("4444", "One figure repeated is guessed first. Choose another PIN.")]
    public void A_new_pin_is_four_to_eight_figures_not_all_the_same(string? pin, string? problem) =>
        Assert.Equal(problem, Pins.Problem(pin));

    [Fact]
    public void A_hash_fits_its_pin_alone_and_is_another_each_time()
    {
        var hash = Pins.Hash("2580");

        Assert.True(Pins.Fits("2580", hash));
        Assert.False(Pins.Fits("2581", hash));
        Assert.False(Pins.Fits("", hash));
        Assert.False(Pins.Fits("2580", null));
        Assert.NotEqual(hash, Pins.Hash("2580"));
        Assert.DoesNotContain("2580", hash.Split('.')[1..], StringComparer.Ordinal);
    }

    [Theory]
    [InlineData(4, 0)]
    [InlineData(5, 1)]
    [InlineData(6, 2)]
    [InlineData(7, 4)]
    [InlineData(10, 32)]
    [InlineData(11, 60)]
    [InlineData(40, 60)]
    public void The_wait_doubles_with_each_wrong_pin_up_to_an_hour(int wrong, int minutes)
    {
        var tries = new PinTries(new FakeTimeProvider());

        for (var times = 0; times < wrong; times++) tries.Wrong("staff 7");

        Assert.Equal(TimeSpan.FromMinutes(minutes), tries.Wait("staff 7"));
        Assert.Equal(TimeSpan.Zero, tries.Wait("staff 8"));
    }

    [Fact]
    public void A_right_pin_clears_the_count_and_the_wait_runs_out()
    {
        var clock = new FakeTimeProvider();
        var tries = new PinTries(clock);

        for (var times = 0; times < 5; times++) tries.Wrong("staff 7");
        clock.Advance(TimeSpan.FromSeconds(30));
        var half = tries.Words("staff 7");
        clock.Advance(TimeSpan.FromSeconds(30));
        var over = tries.Words("staff 7");
        tries.Right("staff 7");
        tries.Wrong("staff 7");

        Assert.Equal("Too many wrong tries. Wait 1 minute, then try again.", half);
        Assert.Null(over);
        Assert.Equal(TimeSpan.Zero, tries.Wait("staff 7"));
    }
}
