using FsCheck.Xunit;
using ProcessorDesk.Trade.Yields;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Yields;

[Properties(MaxTest = 1000, Arbitrary = [typeof(Sizes)])]
public sealed class CutoutTests
{
    [Fact]
    public void Shares_of_every_table_sum_to_exactly_one() =>
        Assert.All(Cutout.All, cutout =>
            Assert.Equal(Ratio.One, cutout.Groups.Select(cutout.ShareOf).Aggregate((sum, share) => sum + share)));

    /// <summary>Source: Massey University 1985, farmed fallow deer; the printed means sum to 100.7.</summary>
    [Fact]
    public void The_deers_printed_shares_are_scaled_to_one_and_marked_provisional()
    {
        var deer = Cutout.For(Species.WhiteTailDeer)!;

        Assert.Equal(100.7m, deer.Groups.Sum(group => group.Printed));
        Assert.Equal(Ratio.Of(394, 1007), deer.ShareOf(deer.Groups.Single(group => group.Name == "haunch")));
        Assert.StartsWith("Provisional", deer.Note, StringComparison.Ordinal);
    }

    [Property]
    public void Groups_of_any_weight_add_up_to_it(Keyed keyed)
    {
        foreach (var cutout in Cutout.All)
        {
            var parts = cutout.Split(keyed.Weight, keyed.Division);
            Assert.Equal(keyed.Weight.Milligrams, parts.Sum(part => part.Milligrams));
            Assert.Equal(keyed.Figure, parts.Sum(keyed.Division.Figure));
        }
    }
}
