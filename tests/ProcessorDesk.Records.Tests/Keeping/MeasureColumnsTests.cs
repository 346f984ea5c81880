using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records.Tests.Cast;
using ProcessorDesk.Records.Tests.Plans;
using ProcessorDesk.Trade;
using Xunit;

namespace ProcessorDesk.Records.Tests.Keeping;

/// <summary>Measures are sums, orders and comparisons of the file itself, not of the program.</summary>
public sealed class MeasureColumnsTests(ShopFile shop) : IClassFixture<ShopFile>
{
    [Fact]
    public void A_sum_of_weights_is_made_by_the_file()
    {
        var jobId = shop.Do((records, act) =>
        {
            var job = Sample.Job(records, act);
            foreach (var pounds in (decimal[])[1.25m, 2.50m])
                records.WeighIns.Add(OfJob(job.Id, Weight.FromPounds(pounds), act));
            return job.Id;
        });
        var watch = new QueryWatch();
        using var records = shop.Open(watch);

        var sum = records.WeighIns.Where(one => one.JobId == jobId).Sum(one => one.Net.Milligrams);

        Assert.Equal(Weight.FromPounds(1.25m).Milligrams + Weight.FromPounds(2.50m).Milligrams, sum);
        Assert.Contains("SUM(\"w\".\"NetMg\")", Assert.Single(watch.Seen).Sql, StringComparison.Ordinal);
    }

    [Fact]
    public void Weights_are_ordered_and_compared_by_the_file()
    {
        var least = Weight.FromPounds(2m);
        using var records = shop.Open();

        var sql = records.WeighIns
            .Where(one => one.Net.Milligrams > least.Milligrams).OrderByDescending(one => one.Net.Milligrams).Select(one => one.Id).ToQueryString();

        Assert.Contains("\"w\".\"NetMg\" > ", sql, StringComparison.Ordinal);
        Assert.Contains("ORDER BY \"w\".\"NetMg\" DESC", sql, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(long.MaxValue)]
    public void A_weight_comes_back_as_it_went_in(long milligrams)
    {
        var id = shop.Do((records, act) =>
        {
            var weighIn = OfJob(Sample.Job(records, act).Id, Weight.FromMilligrams(milligrams), act);
            records.WeighIns.Add(weighIn);
            records.SaveChanges();
            return weighIn.Id;
        });
        using var records = shop.Open();

        var weighIn = records.WeighIns.Single(one => one.Id == id);

        Assert.Equal(milligrams, weighIn.Net.Milligrams);
        Assert.Equal(milligrams, weighIn.Gross.Milligrams);
        Assert.Equal(ScaleDivision.HundredthPound, weighIn.KeyedDivision);
        Assert.Equal(shop.Now, weighIn.At);
        Assert.Equal(DateTimeKind.Utc, weighIn.At.Kind);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(-1)]
    [InlineData(long.MaxValue)]
    [InlineData(-long.MaxValue)]
    public void Money_comes_back_as_it_went_in_a_refund_too(long cents)
    {
        var id = shop.Do((records, act) =>
        {
            var payment = new Payment(Sample.Job(records, act), Money.FromCents(cents), PaymentMethod.Cash, false, null, act.Now, act.Hand.Id);
            records.Payments.Add(payment);
            records.SaveChanges();
            return payment.Id;
        });
        using var records = shop.Open();

        Assert.Equal(cents, records.Payments.Single(one => one.Id == id).Amount.Cents);
        Assert.Equal([cents.ToString(System.Globalization.CultureInfo.InvariantCulture)],
            shop.Column($"SELECT AmountCents FROM Payments WHERE Id = {id}"));
    }

    [Theory]
    [InlineData(null)]
    [InlineData(0)]
    [InlineData(-400)]
    [InlineData(4150)]
    public void A_temperature_that_nobody_took_is_null_and_not_zero(int? hundredths)
    {
        var taken = hundredths is { } given ? Temperature.FromHundredthsFahrenheit(given) : (Temperature?)null;
        var id = shop.Do((records, act) =>
        {
            var deer = Sample.Deer(records, Sample.Job(records, act), act);
            deer.Describe(Species.WhiteTailDeer, Sex.Male, ArrivalState.Whole, taken, null, null);
            return deer.Id;
        });
        using var records = shop.Open();

        Assert.Equal(taken, records.Animals.Single(animal => animal.Id == id).SurfaceTemperature);
        Assert.Equal([hundredths?.ToString(System.Globalization.CultureInfo.InvariantCulture)],
            shop.Column($"SELECT SurfaceTemperatureHundredthsF FROM Animals WHERE Id = {id}"));
        Assert.Equal(hundredths is null ? 1 : 0, records.Animals.Count(animal => animal.Id == id && animal.SurfaceTemperature == null));
    }

    private static WeighIn OfJob(int jobId, Weight weight, Act act) =>
        WeighIn.OfJob(WeighInKind.CutPack, jobId, null, weight, Weight.Zero, Sample.Bench, act.Now, act.Hand.Id);
}
