using ProcessorDesk.Records.Tests.Cast;
using ProcessorDesk.Trade;
using Xunit;

namespace ProcessorDesk.Records.Tests.Invoices;

/// <summary>What the owners of one animal are charged and told comes to the animal, as they would add it up over the phone.</summary>
public sealed class OwnersOfOneAnimalTests(ShopFile shop) : IClassFixture<ShopFile>
{
    private static readonly Price[] s_prices =
    [
        new(PriceFor.Animal, "Kill and cut", ChargeBasis.Each, 10000, taxed: false, Species.Beef),
        new(PriceFor.Animal, "By the pound", ChargeBasis.HangingPound, 100, taxed: false, Species.Beef),
    ];

    [Fact]
    public void Three_owners_of_a_beef_are_charged_for_the_beef_and_no_cent_more_or_less()
    {
        var jobs = Beef(thirds: 3);
        using var records = shop.Open();

        var charges = jobs.Select(job => JobCharges.Of(s_prices, s_prices, records.Shop.Single(), [records.GoodsOf(job).Animals.Single().Charged], [], []).Lines).ToList();

        Assert.Equal([33.34m, 33.33m, 33.33m], charges.Select(lines => lines[0].Amount.Dollars));
        Assert.Equal(["204.17", "204.17", "204.16"], charges.Select(lines => lines[1].Quantity)); // 612.5 ÷ 3 = 204.1666…
        Assert.Equal(100m + 612.5m, charges.Sum(lines => lines.Sum(line => line.Amount.Dollars)));
    }

    [Fact]
    public void Their_statements_start_from_weights_that_sum_to_the_beefs()
    {
        var jobs = Beef(thirds: 3);
        var division = ScaleDivision.HundredthPound;
        using var records = shop.Open();

        var starts = jobs.Select(job => records.YieldAccountOf(job, division).Way[0].Weight).ToList();

        Assert.Equal(["204.17", "204.17", "204.16"], starts.Select(division.PrintFigure));
        Assert.Equal(612.5m, starts.Sum(division.Figure));
    }

    [Fact]
    public void While_a_third_is_nobodys_the_others_pay_theirs()
    {
        var jobs = Beef(thirds: 2);
        using var records = shop.Open();

        Assert.Equal(
            [33.34m, 33.33m],
            jobs.Select(job => JobCharges.Of(s_prices, s_prices, records.Shop.Single(), [records.GoodsOf(job).Animals.Single().Charged], [], []).Lines[0].Amount.Dollars));
    }

    private List<int> Beef(int thirds) => shop.Do((records, act) =>
    {
        var beef = new Animal(Species.Beef, ArrivalState.Skinned, act.Now);
        records.Animals.Add(beef);
        var jobs = Enumerable.Range(0, thirds).Select(i => Sample.Job(records, act, $"Owner {i}")).ToList();
        foreach (var job in jobs)
        {
            Assert.Null(beef.ShareWith(job, Ratio.Of(1, 3), Portion.Part));
            records.SaveChanges();
        }

        records.WeighIns.Add(WeighIn.OfAnimal(WeighInKind.HotHanging, beef, Weight.FromPounds(612.5m), Sample.Bench, act.Now, act.Hand.Id));
        records.SaveChanges();
        return jobs.ConvertAll(job => job.Id);
    });
}
