using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Kitchen.Planning;
using Xunit;

namespace ProcessorDesk.Records.Tests.Kitchen;

/// <summary>A whole day put on the plan at once, in the loads that were shown.</summary>
public sealed class DayTests(KitchenShop shop) : IClassFixture<KitchenShop>
{
    private static readonly ScaleDivision s_bench = ScaleDivision.HundredthPound;

    [Fact]
    public void Every_batch_of_the_day_is_planned_in_the_loads_it_was_arranged_in()
    {
        var job = shop.TwoDeer("Ada Fenn");
        var (ring, hot) = (job.Allotments[KitchenShop.Ring], job.Allotments[KitchenShop.Hot]);

        // 37.14 lb of ring sausage, 25.00 and 12.14 by hand; 15.00 lb of hot sausage.
        var count = shop.Must((records, act) => records.PlanDay([BatchOrder.Of([Load(ring, 25.00m), Load(ring, 12.14m)]), BatchOrder.Of([Load(hot, 15.00m)])], act));

        Assert.Equal(2, count);
        var loads = shop.Read(records => records.Loads.Where(load => load.Parts.Any(part => part.Entry.AllotmentId == ring)).OrderBy(load => load.Number).ToList());
        Assert.Equal([25.00m, 12.14m], loads.Select(load => s_bench.Figure(load.Green)));
        // The lean follows: 25.00 × 25.00 / 37.14 = 16.83, and the rest of it.
        Assert.Equal([16.83m, 8.17m], loads.Select(load => s_bench.Figure(load.Lean)));
        Assert.True(shop.Read(records => records.BatchEntries.Any(entry => entry.AllotmentId == hot)));
    }

    [Fact]
    public void A_day_is_planned_whole_or_not_at_all()
    {
        var job = shop.TwoDeer("Bo Vance");
        var held = shop.TwoDeer("Cy Adair");
        shop.Must((records, act) =>
        {
            records.Holds.Add(Hold.OnJob(records.Jobs.Single(one => one.Id == held.Id), HoldReason.Dispute, null, act.Now, act.Hand.Id));
            return Outcome.Done(held.Id);
        });

        var refused = shop.Try((records, act) => records.PlanDay(
            [BatchOrder.Of([Load(job.Allotments[KitchenShop.Hot], 15.00m)]), BatchOrder.Of([Load(held.Allotments[KitchenShop.Hot], 15.00m)])], act));

        Assert.Contains($"Job {held.Number}:", refused.Text(), StringComparison.Ordinal);
        Assert.False(shop.Read(records => records.BatchEntries.Any(entry => entry.JobId == job.Id)));
        Assert.Equal("Nothing is planned for today. Put something into a load first.", shop.Try((records, act) => records.PlanDay([], act)).Text());
    }

    [Theory]
    [InlineData("25.01", "12.13")] // more than the mixer's 25 lb
    [InlineData("20.00", "17.00")] // less than the 37.14 lb that were agreed
    public void Loads_that_are_no_longer_true_are_not_planned(string first, string second)
    {
        var ring = shop.TwoDeer($"Di Marsh {first}").Allotments[KitchenShop.Ring];

        var refused = shop.Try((records, act) => records.PlanDay([BatchOrder.Of([Load(ring, Figure(first)), Load(ring, Figure(second))])], act));

        Assert.Contains("has changed since the day was planned", refused.Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void Pooled_meat_is_cut_as_little_as_can_be()
    {
        int[] allotments = [.. ((string[])["Em Rowan", "Fay Cole", "Gil Frost"]).Select(owner => shop.TwoDeer(owner, Pooling.Pooled).Allotments[KitchenShop.Hot])];

        var batch = shop.Plan(allotments);

        // Three of 15.00 lb in the fewest loads: 45.00 over 25 is two, so that one contribution is cut once, and both hold 22.50.
        var parts = shop.Read(records => records.LoadParts.Where(part => part.Entry.BatchId == batch).ToList());
        Assert.Equal(4, parts.Count);
        Assert.Equal([22.50m, 22.50m], shop.Read(records => records.Loads.Where(load => load.BatchId == batch).AsEnumerable().Select(load => s_bench.Figure(load.Green)).ToList()));
    }

    private static HandLoad Load(int allotment, decimal pounds) => new(1, [new HandPiece(allotment, Weight.FromPounds(pounds))]);

    private static decimal Figure(string text) => decimal.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
