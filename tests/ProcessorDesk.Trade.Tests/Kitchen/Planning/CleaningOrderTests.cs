using ProcessorDesk.Trade.Kitchen.Planning;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Kitchen.Planning;

/// <summary>What is cleaned and in what order, with round minutes of our own: 100 for pork, 10 an allergen, 5 a species, 1 for cure.</summary>
public sealed class CleaningOrderTests
{
    private static readonly CleaningMinutes s_minutes = new(Pork: 100, Allergen: 10, Species: 5, Cure: 1);
    private static readonly CleaningProfile s_plain = new(Species.WhiteTailDeer, false, false, []);

    [Theory]
    [InlineData("", "", 0)]
    [InlineData("pork", "", 100)]
    [InlineData("", "pork", 0)]
    [InlineData("cured", "", 1)]
    [InlineData("", "cured", 0)]
    [InlineData("milk", "", 10)]
    [InlineData("", "milk", 0)]
    [InlineData("milk wheat", "wheat", 10)]
    [InlineData("milk wheat", "soy", 20)]
    [InlineData("milk", "milk wheat", 0)]
    [InlineData("elk", "", 5)]
    [InlineData("", "elk", 5)]
    [InlineData("elk pork cured milk wheat", "", 126)]
    public void Cleaning_is_what_the_next_may_not_find(string before, string after, int minutes) =>
        Assert.Equal(minutes, s_minutes.Between(Profile(before), Profile(after)).Sum(cleaning => cleaning.Minutes));

    [Fact]
    public void No_batch_in_between_saves_cleaning()
    {
        string[] kinds = ["", "pork", "cured", "milk", "wheat", "milk wheat", "elk", "elk pork", "pork cured milk", "elk cured wheat"];
        foreach (var (a, b, c) in from a in kinds from b in kinds from c in kinds select (a, b, c))
            Assert.True(Cost(a, c) <= Cost(a, b) + Cost(b, c), $"{a} > {b} > {c}");

        static int Cost(string before, string after) => s_minutes.Between(Profile(before), Profile(after)).Sum(cleaning => cleaning.Minutes);
    }

    [Fact]
    public void Pork_free_comes_first_and_the_fewest_allergens()
    {
        // Taken from the plainest to the fullest nothing is ever cleaned away.
        string[] kinds = ["pork cured milk wheat", "pork cured milk", "cured", "", "pork cured"];
        var order = CleaningOrder.Of([.. kinds.Select(Profile)], s_minutes);

        Assert.Equal(["", "cured", "pork cured", "pork cured milk", "pork cured milk wheat"], order.Order.Select(at => kinds[at]));
        Assert.Equal((0, 0, true), (order.Minutes, order.AtLeast, order.IsProved));
    }

    [Fact]
    public void A_species_is_not_left_and_come_back_to()
    {
        // One change of species costs 5, and milk is cleaned away once, before or after the plain deer: 10. Elk with pork
        // before any deer would cost 100, two changes of species 5 more.
        string[] kinds = ["milk", "elk pork", "", "elk"];
        var order = CleaningOrder.Of([.. kinds.Select(Profile)], s_minutes);

        Assert.Equal(["milk", "", "elk", "elk pork"], order.Order.Select(at => kinds[at]));
        Assert.Equal(15, order.Minutes);
    }

    [Fact]
    public void Where_cleaning_does_not_decide_the_order_handed_in_stands()
    {
        string[] kinds = ["elk", ""];

        Assert.Equal([0, 1], CleaningOrder.Of([.. kinds.Select(Profile)], s_minutes).Order);
        Assert.Equal([0, 1], CleaningOrder.Of([.. kinds.Reverse().Select(Profile)], s_minutes).Order);
        Assert.Empty(CleaningOrder.Of([], s_minutes).Order);
    }

    [Fact]
    public void More_profiles_than_can_be_gone_through_get_an_order_with_a_bound()
    {
        // Sixteen sets of four allergens: from the empty set up, a set follows its own part wherever it can. Each of the six pairs
        // of equal size that follow each other costs something, so the least is above zero, and the bound below what was found.
        var profiles = Enumerable.Range(0, 16).Select(set => s_plain with { Allergens = [.. Enumerable.Range(0, 4).Where(bit => (set >> bit & 1) == 1).Select(bit => $"allergen {bit}")] }).ToList();
        var order = CleaningOrder.Of(profiles, s_minutes);

        Assert.Equal(Enumerable.Range(0, 16), order.Order.Order());
        Assert.Equal(order.Minutes, order.Order.Zip(order.Order.Skip(1), (before, after) => profiles[before].Allergens.Except(profiles[after].Allergens).Count() * 10).Sum());
        Assert.InRange(order.AtLeast, 0, order.Minutes);
        // Order by size, then any: at most two are cleaned away at each step within a size, none at a step up that keeps them.
        Assert.InRange(order.Minutes, 0, 16 * 20);
    }

    private static CleaningProfile Profile(string words)
    {
        var said = words.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return new CleaningProfile(
            said.Contains("elk") ? Species.Elk : Species.WhiteTailDeer, said.Contains("pork"), said.Contains("cured"), [.. said.Except(["elk", "pork", "cured"])]);
    }
}
