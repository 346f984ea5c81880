using FsCheck.Xunit;
using ProcessorDesk.Trade.Pricing;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Pricing;

[Properties(MaxTest = 1000)]
public sealed class DatedPricesTests
{
    private static readonly DateOnly s_first = new(2026, 1, 1);

    private static readonly List[] s_lists =
    [
        new("autumn", new(2026, 9, 1)), new("winter", new(2026, 12, 1)), new("put right", new(2026, 12, 1)), new("last year's", new(2025, 9, 1)),
    ];

    [Theory]
    [InlineData("2025-08-31", null)]
    [InlineData("2025-09-01", "last year's")]
    [InlineData("2026-08-31", "last year's")]
    [InlineData("2026-09-01", "autumn")]
    [InlineData("2026-11-30", "autumn")]
    [InlineData("2026-12-01", "put right")] // two start on one day: the one made later
    [InlineData("2036-02-29", "put right")]
    public void The_list_in_force_is_the_one_that_started_last(string day, string? name) =>
        Assert.Equal(name, DatedPrices.InForce(
            s_lists, list => list.StartsOn, DateOnly.ParseExact(day, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture))?.Name);

    [Fact]
    public void A_job_keeps_its_list_and_what_that_lacks_is_todays_and_says_so()
    {
        string[] own = ["ring 3.25", "bologna 3.00"];
        string[] today = ["ring 3.75", "snack sticks 6.50"];

        var ring = DatedPrices.Find(own, today, price => price.StartsWith("ring", StringComparison.Ordinal))!;
        var sticks = DatedPrices.Find(own, today, price => price.StartsWith("snack", StringComparison.Ordinal))!;

        Assert.Equal(("ring 3.25", false, "Ring"), (ring.Price, ring.IsTodays, ring.Say("Ring")));
        Assert.Equal(("snack sticks 6.50", true, "Snack sticks (today's price)"), (sticks.Price, sticks.IsTodays, sticks.Say("Snack sticks")));
        Assert.Null(DatedPrices.Find(own, today, price => price.StartsWith("ham", StringComparison.Ordinal)));
    }

    [Property]
    public void No_list_that_had_started_is_later_than_the_one_in_force(byte[] starts, byte day)
    {
        var lists = starts.Select(start => new List($"{start}", s_first.AddDays(start))).ToList();

        var found = DatedPrices.InForce(lists, list => list.StartsOn, s_first.AddDays(day));

        Assert.Equal(starts.Any(start => start <= day), found is not null);
        Assert.All(lists.Where(list => list.StartsOn <= s_first.AddDays(day)), list => Assert.True(list.StartsOn <= found!.StartsOn));
        Assert.True(found is null || found.StartsOn <= s_first.AddDays(day));
    }

    private sealed record List(string Name, DateOnly StartsOn);
}
