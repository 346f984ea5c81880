using System.Diagnostics;
using Xunit;
using Xunit.Abstractions;

namespace ProcessorDesk.Reference.Tests.Planning;

/// <summary>
/// Pooled batches held against CP-SAT of OR-Tools: where ours says proved, loads, cuts and spread are the optimum; hurried, with a few
/// steps only, the optimum lies within the bounds that it states.
/// </summary>
public sealed class PooledLoadsAgainstCpSat(ITestOutputHelper output)
{
    [Fact]
    public void The_first_of_the_batches_agree() => Compare(0, 25);

    [Fact]
    [Trait("Tier", "Long")]
    public void Five_hundred_batches_agree() => Compare(25, 500);

    private void Compare(int first, int count)
    {
        var (ours, reference) = (new Stopwatch(), new Stopwatch());
        var (proved, undecided, byPieces, hurriedProved, moreLoads, worse, worstGap, slowest) = (0, 0, 0, 0, 0, 0, 0L, TimeSpan.Zero);
        RandomBatch.Of(first).Divide();
        for (var seed = first; proved < count; seed++)
        {
            var batch = RandomBatch.Of(seed);
            var before = ours.Elapsed;
            ours.Start();
            var divided = batch.Divide();
            ours.Stop();
            slowest = ours.Elapsed - before > slowest ? ours.Elapsed - before : slowest;
            reference.Start();
            var answer = LoadsBySets.Best(batch, divided.Cuts, divided.Spread);
            reference.Stop();
            if (answer is not { } best)
            {
                Assert.True(10 * ++undecided <= count, $"The reference left {undecided} undecided.");
                continue;
            }

            reference.Start();
            if (LoadsByPieces.CanSolve(batch))
            {
                Assert.Equal(LoadsByPieces.Best(batch), best);
                byPieces++;
            }

            reference.Stop();

            Assert.True(divided.IsProved, $"Batch {seed}, {batch}: not proved.");
            Assert.True((divided.Loads.Count, divided.Cuts, divided.Spread) == best, $"Batch {seed}, {batch}: the reference has {best}, ours {(divided.Loads.Count, divided.Cuts, divided.Spread)}.");
            proved++;

            var hurried = batch.Divide(steps: 4 << (seed % 8));
            Assert.Equal(best.Loads, hurried.Loads.Count);
            Assert.InRange(best.Cuts, hurried.CutsAtLeast, hurried.Cuts);
            Assert.True(hurried.Cuts > best.Cuts || (hurried.SpreadAtLeast <= best.Spread && best.Spread <= hurried.Spread), $"Batch {seed}, {batch}: {best} is not within {hurried.SpreadAtLeast} and {hurried.Spread}.");
            hurriedProved += hurried.IsProved ? 1 : 0;
            worstGap = Math.Max(worstGap, hurried.Cuts - hurried.CutsAtLeast);

            var firstFit = batch.FirstFit();
            moreLoads += firstFit.Loads > best.Loads ? 1 : 0;
            worse += firstFit.CompareTo(best) > 0 ? 1 : 0;
        }

        output.WriteLine($"{count} batches of 2 to 12 contributions, {proved} proved and all equal to the optimum in loads, cuts and spread; {byPieces} of them by the model of pieces too.");
        output.WriteLine($"{undecided} more were left out, as the reference did not come to its end.");
        output.WriteLine($"Ours {ours.ElapsedMilliseconds} ms in all, {slowest.TotalMilliseconds:0.0} ms the slowest; CP-SAT {reference.ElapsedMilliseconds} ms in all.");
        output.WriteLine($"Hurried to 4 to 512 steps: {hurriedProved} proved, the others within their bounds; the widest is {worstGap} cuts.");
        output.WriteLine($"First-fit without cutting takes more loads in {100.0 * moreLoads / count:0.0} %, and is worse in loads, cuts or spread in {100.0 * worse / count:0.0} %.");
        Assert.True(3 * moreLoads >= count, $"First-fit takes more loads in only {moreLoads} of {count}: the batches made up are too easy.");
    }
}
