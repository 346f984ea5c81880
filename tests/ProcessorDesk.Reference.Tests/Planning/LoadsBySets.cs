using Google.OrTools.Sat;

namespace ProcessorDesk.Reference.Tests.Planning;

/// <summary>
/// A batch as CP-SAT is asked to cover it: every set of contributions that can have loads of its own is taken or not, each contribution
/// lies in one that is taken. First the most sets, which is the fewest cuts, then the smallest spread of their even loads, up to the one claimed:
/// a smaller one would be found, and one that can't be reached leaves the model without a way. That the best
/// arrangement is of this kind is shown in the docs, and held against <see cref="LoadsByPieces"/> where that can be solved.
/// </summary>
public static class LoadsBySets
{
    /// <summary>Null where the reference does not come to its end within its own count of steps.</summary>
    public static (long Loads, long Cuts, long Spread)? Best(RandomBatch batch, long claimedCuts, long claimedSpread)
    {
        var loads = batch.LeastLoads;
        var fill = Math.Clamp(batch.Fill, 1, batch.Greens.Sum() / loads);
        // None can be under no cuts; whether there is a way without is then seen with the spread.
        if ((claimedCuts == 0 ? loads : Solve([.. Groups(batch, fill)], batch, null)) is not { } most)
            return null;
        return Solve([.. Groups(batch, fill).Where(group => IsNear(group.Sum, group.Loads))], batch, most) is { } spread ? (loads, loads - most, spread) : null;

        // Loads within the spread claimed are no further than it from the average, which lies among them.
        bool IsNear(long sum, long own) =>
            sum / own + claimedSpread >= (batch.Greens.Sum() + loads - 1) / loads && (sum + own - 1) / own - claimedSpread <= batch.Greens.Sum() / loads;
    }

    private static long? Solve(List<(int Members, long Sum, long Loads)> sets, RandomBatch batch, long? most)
    {
        var model = new CpModel();
        var groups = sets.Select(group => (group.Members, group.Loads, group.Sum, Taken: (LinearExpr)model.NewBoolVar(""))).ToList();
        model.Add(LinearExpr.WeightedSum(groups.Select(group => group.Taken), groups.Select(group => group.Loads)) == batch.LeastLoads);
        var (fullest, emptiest) = (model.NewIntVar(1, batch.Capacity, ""), model.NewIntVar(1, batch.Capacity, ""));
        for (var member = 0; member < batch.Greens.Count; member++)
        {
            var around = groups.Where(group => (group.Members >> member & 1) == 1).ToList();
            model.Add(LinearExpr.Sum(around.Select(group => group.Taken)) == 1);
            model.Add(LinearExpr.WeightedSum(around.Select(group => group.Taken), around.Select(group => (group.Sum + group.Loads - 1) / group.Loads)) <= fullest);
            model.Add(LinearExpr.WeightedSum(around.Select(group => group.Taken), around.Select(group => group.Sum / group.Loads)) >= emptiest);
        }

        var count = LinearExpr.Sum(groups.Select(group => group.Taken));
        if (most is { } fixedSets)
        {
            model.Add(count == fixedSets);
            model.Minimize(fullest - emptiest);
        }
        else
        {
            model.Maximize(count);
        }

        var solver = new CpSolver { StringParameters = "num_workers:1,random_seed:7,max_deterministic_time:4" };
        return solver.Solve(model) switch
        {
            CpSolverStatus.Optimal => (long)Math.Round(solver.ObjectiveValue),
            CpSolverStatus.Feasible or CpSolverStatus.Unknown => null,
            var other => throw new InvalidOperationException($"What was claimed of {batch} can't be: the reference ended with {other}."),
        };
    }

    /// <summary>
    /// In the fewest loads of all, each set has the fewest of its own: they add up to no less, and more would be too many. So none leaves more
    /// room than all do together.
    /// </summary>
    private static IEnumerable<(int Members, long Sum, long Loads)> Groups(RandomBatch batch, long fill) =>
        from members in Enumerable.Range(1, (1 << batch.Greens.Count) - 1)
        let sum = batch.Greens.Where((_, i) => (members >> i & 1) == 1).Sum()
        let loads = (sum + batch.Capacity - 1) / batch.Capacity
        where sum >= fill * loads && loads * batch.Capacity - sum <= batch.LeastLoads * batch.Capacity - batch.Greens.Sum()
        select (members, sum, loads);
}
