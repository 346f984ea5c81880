using ProcessorDesk.Trade;
using Xunit;

namespace ProcessorDesk.Records.Tests.Weighing;

public sealed class JobWeightsTests : IDisposable
{
    private static readonly ScaleDivision s_hundredth = ScaleDivision.HundredthPound;

    private readonly WeighedJob _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public void Nothing_weighed_is_zero_meat_and_animals_without_weights()
    {
        var weights = _shop.Read(_shop.Job, s_hundredth);

        Assert.Equal([_shop.Whole.Id, _shop.Half.Id], weights.Animals.Select(animal => animal.AnimalId));
        Assert.All(weights.Animals, animal => Assert.Null(animal.Arrival ?? animal.HotHanging ?? animal.ChilledHanging));
        Assert.Equal(Weight.Zero, weights.Lean + weights.Cuts + weights.Fat + weights.Bone + weights.Discard);
    }

    [Fact]
    public void An_animal_comes_with_its_tag_and_what_of_it_is_the_jobs()
    {
        var weights = _shop.Read(_shop.Job, s_hundredth);

        Assert.Equal("W 1", weights.Animals[0].Tag);
        Assert.Equal((Species.WhiteTailDeer, Ratio.One), (weights.Animals[0].Species, weights.Animals[0].Fraction));
        Assert.Equal((Species.Beef, Ratio.Of(1, 2)), (weights.Animals[1].Species, weights.Animals[1].Fraction));
    }

    [Fact]
    public void Each_kind_of_meat_is_added_up_for_its_own_job_alone()
    {
        _shop.Weigh(_shop.Job, WeighInKind.LeanTrim, 31.52m);
        _shop.Weigh(_shop.Job, WeighInKind.LeanTrim, 26.38m);
        _shop.Weigh(_shop.Job, WeighInKind.CutPack, 4.25m);
        _shop.Weigh(_shop.Job, WeighInKind.FatTrim, 3.10m);
        _shop.Weigh(_shop.Job, WeighInKind.Bone, 18.40m);
        _shop.Weigh(_shop.Job, WeighInKind.Discard, 1.05m);
        _shop.Weigh(_shop.Other, WeighInKind.LeanTrim, 99m);

        var weights = _shop.Read(_shop.Job, s_hundredth);

        Assert.Equal(Weight.FromPounds(31.52m + 26.38m), weights.Lean);
        Assert.Equal(Weight.FromPounds(4.25m), weights.Cuts);
        Assert.Equal(Weight.FromPounds(3.10m), weights.Fat);
        Assert.Equal(Weight.FromPounds(18.40m), weights.Bone);
        Assert.Equal(Weight.FromPounds(1.05m), weights.Discard);
    }

    [Fact]
    public void A_struck_weight_is_in_no_sum()
    {
        _shop.Weigh(_shop.Job, WeighInKind.LeanTrim, 20m);
        var wrong = _shop.Weigh(_shop.Job, WeighInKind.LeanTrim, 200m);
        _shop.Strike(wrong);

        Assert.Equal(Weight.FromPounds(20m), _shop.Read(_shop.Job, s_hundredth).Lean);
    }

    [Fact]
    public void The_last_standing_weight_of_an_animal_counts()
    {
        _shop.Weigh(_shop.Whole, WeighInKind.Arrival, 128.5m);
        _shop.Weigh(_shop.Whole, WeighInKind.HotHanging, 90m);
        _shop.Weigh(_shop.Whole, WeighInKind.HotHanging, 96.5m);
        _shop.Strike(_shop.Weigh(_shop.Whole, WeighInKind.HotHanging, 965m));
        _shop.Weigh(_shop.Whole, WeighInKind.ChilledHanging, 93m);

        var animal = _shop.Read(_shop.Job, s_hundredth).Animals[0];

        Assert.Equal(Weight.FromPounds(128.5m), animal.Arrival);
        Assert.Equal(Weight.FromPounds(96.5m), animal.HotHanging);
        Assert.Equal(Weight.FromPounds(93m), animal.ChilledHanging);
        Assert.Equal(Weight.FromPounds(93m), animal.Hanging);
    }

    [Fact]
    public void Both_owners_of_a_side_see_the_whole_animals_weight()
    {
        _shop.Weigh(_shop.Half, WeighInKind.HotHanging, 610m);

        Assert.Equal(Weight.FromPounds(610m), _shop.Read(_shop.Job, s_hundredth).Animals[1].Hanging);
        Assert.Equal(Weight.FromPounds(610m), Assert.Single(_shop.Read(_shop.Other, s_hundredth).Animals).Hanging);
    }

    [Fact]
    public void Sums_are_made_in_divisions_as_printed()
    {
        _shop.Weigh(_shop.Job, WeighInKind.LeanTrim, 10.26m);
        _shop.Weigh(_shop.Job, WeighInKind.LeanTrim, 10.26m);

        // At half a pound each prints 10.5; the sum of what is printed is 21.0, not 20.52 rounded to 20.5.
        Assert.Equal(Weight.FromPounds(10.5m + 10.5m), _shop.Read(_shop.Job, ScaleDivision.Of(WeightUnit.Pound, 0.5m)).Lean);
    }

    [Fact]
    public void Two_queries_read_it_all()
    {
        var commands = new List<string>();

        _shop.Read(_shop.Job, s_hundredth, commands.Add);

        Assert.Equal(2, commands.Count(command => command.Contains("SELECT", StringComparison.Ordinal)));
    }
}
