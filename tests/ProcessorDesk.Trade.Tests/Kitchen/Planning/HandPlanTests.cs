using ProcessorDesk.Trade.Kitchen;
using ProcessorDesk.Trade.Kitchen.Planning;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Kitchen.Planning;

/// <summary>
/// What is said to loads arranged by hand. 1 and 2 are ring sausage of owners who agreed to pooling, 12 and 13 lb; 3 and 4 likewise, 20 and 5 lb;
/// 5 is the own ask of a fifth owner, 8 lb. The plan: 12 + 13, 20 + 5, and 8 alone.
/// </summary>
public sealed class HandPlanTests
{
    private static readonly KitchenProduct s_ring = new(1, "Ring sausage", ["milk"], IsCured: true, IsSmoked: true);
    private static readonly DaySettings s_shop = new(
        Weight.FromPounds(25), Weight.FromPounds(10), null, null, ScaleDivision.HundredthPound, CleaningMinutes.Usual);

    [Theory]
    [InlineData("1:12 2:13 | 3:20 4:5 | 5:8", "")]
    [InlineData("1:12 2:13 | 3:20 4:5", "")]
    [InlineData("1:12 2:13 | 3:20 | 4:5 5:8", "Loads[2]")]                    // another owner's meat in an own load
    [InlineData("1:12 2:13 4:0.01 | 3:20 4:4.99 | 5:8", "Loads[0]")]          // 25.01 lb
    [InlineData("1:12 2:12.99 | 3:20 4:5 | 5:8", "Allotments[2]")]            // a division is missing
    [InlineData("1:12 2:13 | 3:20 4:5 | 5:8 | 5:8", "Allotments[5]")]         // twice
    [InlineData("1:12 2:13 | 3:20 4:5 | 5:8 | 9:1", "Loads[3]")]              // nothing of that number waits
    [InlineData("1:12 2:13 | 3:20 4:5 4:0 | 5:8", "Loads[1]")]                // a piece of nothing
    public void What_breaks_a_promise_is_refused_at_its_place(string loads, string fields)
    {
        var judged = Judge(loads);

        Assert.Equal(fields, string.Join(' ', judged.Refusals.Select(finding => finding.Field)));
        Assert.Empty(judged.Costs);
    }

    [Fact]
    public void A_load_is_of_one_product_one_species_and_with_or_without_pork()
    {
        Assert.StartsWith("Load 1 is of Ring sausage and Fresh brats.", Refused(meat => meat with { Product = s_ring with { Key = 2, Name = "Fresh brats" } }), StringComparison.Ordinal);
        Assert.StartsWith("Load 1 is of more than one species.", Refused(meat => meat with { Species = Species.Elk }), StringComparison.Ordinal);
        Assert.StartsWith("Load 1 has pork in it, and that of owner 2 is to be pork-free.", Refused(meat => meat with { HoldsPork = false }), StringComparison.Ordinal);

        static string Refused(Func<WaitingMeat, WaitingMeat> changed) =>
            Assert.Single(HandPlan.Judge([Meat(1, 12), changed(Meat(2, 13))], s_shop, Loads("1:12 2:13")).Refusals).Text;
    }

    [Theory]
    [InlineData("1:12 2:13 | 3:20 | 4:5 | 5:8", "Ring sausage: 4 loads; the plan has 3.", "Ring sausage: 2 loads under the smallest good fill of 10.00 lb; the plan has 1.",
        "Ring sausage: 20.00 lb between the fullest and the emptiest load; in the plan 0.00 lb.")]
    [InlineData("1:12 3:13 | 3:7 2:13 4:5 | 5:8", "Ring sausage: 1 cut between loads; the plan has 0.")]
    [InlineData("1:12 2:13 | 3:20 4:5 | 5:4 | 5:4", "Ring sausage: 4 loads; the plan has 3.", "Ring sausage: 2 loads under the smallest good fill of 10.00 lb; the plan has 1.")]
    public void What_is_worse_than_the_plan_is_said(string loads, params string[] costs) =>
        Assert.Equal(costs, Judge(loads).Costs.Select(finding => finding.Text));

    [Fact]
    public void The_hand_may_go_over_the_day_and_is_told() =>
        Assert.Equal(
            ["The day takes 30.00 lb; this is 58.00 lb. Leave something for another day.", "The smokehouse takes 57.99 lb; this is 58.00 lb. Leave something for another day."],
            HandPlan.Judge(Waiting(), s_shop with { Day = Weight.FromPounds(30), Smokehouse = Weight.FromPounds(57.99m) }, Loads("1:12 2:13 | 3:20 4:5 | 5:8")).Costs.Select(finding => finding.Text));

    private static HandJudgement Judge(string loads) => HandPlan.Judge(Waiting(), s_shop, Loads(loads));

    private static List<WaitingMeat> Waiting() => [Meat(1, 12), Meat(2, 13), Meat(3, 20), Meat(4, 5), Meat(5, 8) with { IsPooled = false }];

    private static List<HandLoad> Loads(string loads) =>
        [.. loads.Split(" | ").Select((load, i) => new HandLoad(i + 1, [.. load.Split(' ').Select(piece => piece.Split(':')).Select(piece =>
            new HandPiece(int.Parse(piece[0], System.Globalization.CultureInfo.InvariantCulture), Weight.FromPounds(decimal.Parse(piece[1], System.Globalization.CultureInfo.InvariantCulture))))]))];

    private static WaitingMeat Meat(int id, int pounds) => new(
        id, $"owner {id}", s_ring, id, true, new BatchPart(Weight.Zero, Weight.Zero, Weight.FromPounds(pounds)), Species.WhiteTailDeer, true, null);
}
