using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records.Tests.Cast;
using ProcessorDesk.Trade;
using Xunit;

namespace ProcessorDesk.Records.Tests.Animals;

public sealed class ShareTests(ShopFile shop) : IClassFixture<ShopFile>
{
    [Fact]
    public void Three_thirds_are_exactly_one()
    {
        var animal = Shared((1, 3), (1, 3), (1, 3));
        using var records = shop.Open();

        Assert.Equal(Ratio.One, Whole(records, animal).SharesSum);
        Assert.Equal(3, Whole(records, animal).Shares.Count);
    }

    [Fact]
    public void A_share_that_passes_one_is_refused_and_says_what_it_came_to()
    {
        var animal = Shared((1, 2));

        var refusal = shop.Do((records, act) => Whole(records, animal).ShareWith(Sample.Job(records, act), Ratio.Of(2, 3), Portion.Part));

        Assert.Equal("Fraction", refusal!.Field);
        Assert.Contains("7/6", refusal.Text, StringComparison.Ordinal);
        Assert.Equal(["1"], shop.Column($"SELECT COUNT(*) FROM Shares WHERE AnimalId = {animal}"));
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(-1, 4)]
    [InlineData(5, 4)]
    [InlineData(33333333333, 100000000000)]
    [InlineData(1, 10001)]
    public void What_is_no_share_is_refused(long numerator, long denominator) => shop.Do((records, act) =>
    {
        var animal = new Animal(Species.Beef, ArrivalState.Whole, act.Now);

        Assert.NotNull(animal.ShareWith(Sample.Job(records, act), Ratio.Of(numerator, denominator), Portion.Part));
        Assert.Empty(animal.Shares);
        return animal;
    });

    [Fact]
    public void One_job_has_one_share_of_an_animal()
    {
        using var records = shop.Open();

        Assert.Throws<DbUpdateException>(() => shop.Run(records, act =>
        {
            var job = Sample.Job(records, act);
            var animal = new Animal(Species.Hog, ArrivalState.Whole, act.Now);
            animal.ShareWith(job, Ratio.Of(1, 2), Portion.Side);
            animal.ShareWith(job, Ratio.Of(1, 2), Portion.Side);
            records.Animals.Add(animal);
            return Outcome.Done();
        }));
    }

    [Fact]
    public void An_animal_shared_out_in_part_is_named_before_the_first_knife()
    {
        var (whole, half) = (Shared((1, 2), (1, 2)), Shared((1, 2)));
        using var records = shop.Open();

        Assert.DoesNotContain(records.StoppingKnife(JobOf(records, whole)), IsOfShares);
        var finding = Assert.Single(records.StoppingKnife(JobOf(records, half)), IsOfShares);
        Assert.Equal(("1/2", "1"), (finding.Found, finding.Allowed));
    }

    [Fact]
    public void An_animal_divided_anew_comes_to_one_at_most_and_names_its_portions()
    {
        var animal = Shared((1, 2), (1, 2));

        Assert.NotNull(Divide(animal, Ratio.Of(3, 4), Ratio.Of(1, 2)));
        Assert.NotNull(Divide(animal, Ratio.Of(33333333333, 100000000000), Ratio.Of(1, 2)));
        Assert.NotNull(Divide(animal, Ratio.Of(-1, 4), Ratio.Of(1, 2)));
        Assert.Equal(["1/2", "1/2"], Fractions(animal));

        Assert.Null(Divide(animal, Ratio.Of(3, 4), Ratio.Of(1, 4)));
        Assert.Equal(["3/4", "1/4"], Fractions(animal));
        using var records = shop.Open();
        Assert.Equal([Portion.Part, Portion.Quarter], Whole(records, animal).Shares.OrderBy(share => share.Id).Select(share => share.Portion));
    }

    private Finding? Divide(int animalId, Ratio first, Ratio second) => shop.Do((records, _) =>
    {
        var animal = records.Animals.Include(one => one.Shares).ThenInclude(share => share.Job).Single(one => one.Id == animalId);
        var jobs = animal.Shares.OrderBy(share => share.Id).Select(share => share.JobId).ToList();
        return animal.Divide([(jobs[0], first), (jobs[1], second)]);
    });

    private List<string> Fractions(int animalId)
    {
        using var records = shop.Open();
        return [.. Whole(records, animalId).Shares.OrderBy(share => share.Id).Select(share => share.Fraction.ToString())];
    }

    private static bool IsOfShares(Finding finding) => finding.Text.Contains("shares", StringComparison.Ordinal);

    private int Shared(params (int Numerator, int Denominator)[] shares) => shop.Do((records, act) =>
    {
        var animal = new Animal(Species.Beef, ArrivalState.Whole, act.Now);
        foreach (var (numerator, denominator) in shares)
            Assert.Null(animal.ShareWith(Sample.Job(records, act), Ratio.Of(numerator, denominator), Portion.Part));
        records.Animals.Add(animal);
        records.SaveChanges();
        return animal.Id;
    });

    private static Animal Whole(RecordsContext records, int id) => records.Animals.Include(animal => animal.Shares).Single(animal => animal.Id == id);

    private static int JobOf(RecordsContext records, int animalId) => records.Shares.First(share => share.AnimalId == animalId).JobId;
}
