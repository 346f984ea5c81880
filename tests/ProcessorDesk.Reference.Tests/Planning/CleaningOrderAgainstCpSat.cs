using System.Diagnostics;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Kitchen.Planning;
using Xunit;
using Xunit.Abstractions;

namespace ProcessorDesk.Reference.Tests.Planning;

/// <summary>The order of the day held against the circuit of CP-SAT: exact up to fifteen profiles, within its bound beyond.</summary>
public sealed class CleaningOrderAgainstCpSat(ITestOutputHelper output)
{
    private static readonly Species[] s_species = [Species.WhiteTailDeer, Species.Elk, Species.Bear];
    private static readonly string[] s_allergens = ["milk", "soybeans", "wheat", "mustard"];

    [Fact]
    public void The_first_of_the_days_agree() => Compare(0, 25);

    [Fact]
    [Trait("Tier", "Long")]
    public void Two_hundred_days_agree() => Compare(25, 200);

    private void Compare(int first, int count)
    {
        var (ours, reference) = (new Stopwatch(), new Stopwatch());
        var (proved, withCleaning, beyond, worstGap, worstOver) = (0, 0, 0, 0, 0);
        CleaningOrder.Of(Profiles(new Random(first)), CleaningMinutes.Usual);
        foreach (var seed in Enumerable.Range(first, count))
        {
            var random = new Random(seed);
            var (profiles, minutes) = (Profiles(random), Minutes(random));
            ours.Start();
            var order = CleaningOrder.Of(profiles, minutes);
            ours.Stop();
            reference.Start();
            var least = OrderByCircuit.Least(profiles, minutes);
            reference.Stop();

            Assert.Equal(Enumerable.Range(0, profiles.Count), order.Order.Order());
            Assert.Equal(order.Minutes, order.Order.Zip(order.Order.Skip(1), (before, after) => OrderByCircuit.Minutes(profiles[before], profiles[after], minutes)).Sum());
            Assert.InRange(least, order.AtLeast, order.Minutes);
            Assert.True(order.IsProved || profiles.Count > CleaningOrder.MostExact, $"Day {seed} of {profiles.Count} profiles is not proved.");
            (proved, withCleaning) = (proved + (order.IsProved ? 1 : 0), withCleaning + (least > 0 ? 1 : 0));
            if (profiles.Count > CleaningOrder.MostExact)
                (beyond, worstGap, worstOver) = (beyond + 1, Math.Max(worstGap, order.Minutes - order.AtLeast), Math.Max(worstOver, order.Minutes - least));
        }

        output.WriteLine($"{count} days of 2 to 18 profiles, {withCleaning} of which can't do without cleaning; {proved} proved and equal to the optimum.");
        output.WriteLine($"{beyond} of more than fifteen: within their bounds, the widest {worstGap} min; at most {worstOver} min over the optimum.");
        output.WriteLine($"Ours {ours.ElapsedMilliseconds} ms in all; CP-SAT {reference.ElapsedMilliseconds} ms in all.");
        Assert.True(2 * withCleaning >= count, $"Only {withCleaning} of {count} days need cleaning: the days made up are too easy.");
    }

    private static List<CleaningProfile> Profiles(Random random)
    {
        var count = random.Next(2, 19);
        var profiles = new HashSet<CleaningProfile>();
        while (profiles.Count < count)
        {
            profiles.Add(new CleaningProfile(
                s_species[random.Next(s_species.Length)], random.Next(2) == 0, random.Next(2) == 0, [.. s_allergens.Where(_ => random.Next(3) == 0)]));
        }

        return [.. profiles];
    }

    private static CleaningMinutes Minutes(Random random) =>
        random.Next(2) == 0 ? CleaningMinutes.Usual : new CleaningMinutes(random.Next(0, 60), random.Next(0, 60), random.Next(0, 60), random.Next(0, 60));
}
