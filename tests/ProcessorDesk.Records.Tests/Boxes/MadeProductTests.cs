using ProcessorDesk.Trade;
using Xunit;

namespace ProcessorDesk.Records.Tests.Boxes;

/// <summary>Where a product was at a moment, read from facts that carry their time.</summary>
public sealed class MadeProductTests
{
    private static readonly DateTime s_start = new(2026, 11, 25, 15, 0, 0, DateTimeKind.Utc);

    [Theory]
    [InlineData(-1, "not begun")]
    [InlineData(0, "to be mixed in batch 12")]
    [InlineData(2, "to be mixed in batch 12")]
    [InlineData(3, "resting in batch 12")]
    [InlineData(4, "stuffed in batch 12")]
    [InlineData(5, "in the heat with batch 12")]
    [InlineData(6, "stuffed in batch 12")] // the heat was undone then
    [InlineData(7, "in the chill with batch 12")]
    [InlineData(8, "packed, waits for the release of batch 12")]
    public void A_product_is_where_its_last_step_put_it(int hour, string where)
    {
        var product = Product(new MadeProduct.InBatch(1, 12, At(0), At(3), At(9), null, null,
        [
            new(BatchStepKind.RestStarted, At(3), null), new(BatchStepKind.Stuffed, At(4), null), new(BatchStepKind.HeatStarted, At(5), At(6)),
            new(BatchStepKind.ChillStarted, At(7), null), new(BatchStepKind.Packed, At(8), null),
        ]));

        Assert.False(product.WasReleasedAt(At(hour)));
        Assert.Equal(where, product.WhereAt(At(hour)));
        Assert.True(product.WasReleasedAt(At(9)));
    }

    [Fact]
    public void Without_a_batch_it_is_not_begun() => Assert.Equal("not begun", Product(null).WhereAt(At(100)));

    [Fact]
    public void Thrown_out_it_says_why_from_then_on()
    {
        var product = Product(new MadeProduct.InBatch(1, 12, At(0), At(3), null, At(5), "the cooler failed", []));

        Assert.Equal("mixed in batch 12", product.WhereAt(At(4)));
        Assert.Equal("thrown out: the cooler failed", product.WhereAt(At(5)));
        Assert.False(product.WasReleasedAt(At(100)));
    }

    private static DateTime At(int hour) => s_start.AddHours(hour);

    private static MadeProduct Product(MadeProduct.InBatch? batch) =>
        new(1, 1, "Summer sausage", Weight.Zero, Weight.Zero, Weight.Zero, Weight.Zero, batch, null, false);
}
