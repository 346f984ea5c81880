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
