using Google.OrTools.Sat;

namespace ProcessorDesk.Reference.Tests.Planning;

/// <summary>
/// A batch as CP-SAT sees it without any thought: how much of each contribution lies in each load, stage after stage. It knows
/// nothing of groups, and holds the argument about groups itself to account; but it comes to its end only for small batches. Loads are numbered
/// from the fullest to the emptiest, which leaves out no arrangement.
/// </summary>
public static class LoadsByPieces
{
    public static bool CanSolve(RandomBatch batch) => batch.Greens.Count * batch.LeastLoads <= 20;

    /// <summary>The fewest loads with the fill, or if there are none without it and with the fullest emptiest load; then cuts; then the spread.</summary>
    public static (long Loads, long Cuts, long Spread) Best(RandomBatch batch)
    {
        // No batch needs more loads than if each contribution were made by itself.
        var most = batch.Greens.Sum(green => (green + batch.Capacity - 1) / batch.Capacity);
        var fill = Math.Max(1, batch.Fill);
        if (Fewest(batch, fill, most) is not { } loads)
        {
            loads = Fewest(batch, 1, most) ?? throw new InvalidOperationException($"No loads for {batch}.");
            fill = new Model(batch, loads, 1).Maximized(model => model.Loads[^1]);
        }

        var cuts = new Model(batch, loads, fill).Minimized(model => model.Cuts);
        var spread = new Model(batch, loads, fill, cuts).Minimized(model => model.Loads[0] - model.Loads[^1]);
        return (loads, cuts, spread);
    }

    private static long? Fewest(RandomBatch batch, long fill, long most)
    {
        for (var loads = 1L; loads <= most; loads++)
        {
            if (new Model(batch, loads, fill).IsPossible())
                return loads;
        }

        return null;
    }

    private sealed class Model
    {
        private readonly CpModel _model = new();

        public Model(RandomBatch batch, long loads, long fill, long? cuts = null)
        {
            Loads = [.. Enumerable.Range(0, (int)loads).Select(_ => _model.NewIntVar(fill, batch.Capacity, ""))];
            var (pieces, filled) = (new List<LinearExpr>(), Loads.ConvertAll(_ => new List<LinearExpr>()));
            foreach (var green in batch.Greens)
            {
                var parts = Loads.ConvertAll(_ => _model.NewIntVar(0, Math.Min(green, batch.Capacity), ""));
                _model.Add(LinearExpr.Sum(parts) == green);
                for (var load = 0; load < parts.Count; load++)
                {
                    var piece = _model.NewBoolVar("");
                    _model.Add(parts[load] <= Math.Min(green, batch.Capacity) * piece);
                    filled[load].Add(parts[load]);
                    pieces.Add(piece);
                }
            }

            for (var load = 0; load < Loads.Count; load++)
                _model.Add(LinearExpr.Sum(filled[load]) == Loads[load]);
            for (var load = 1; load < Loads.Count; load++)
                _model.Add(Loads[load - 1] >= Loads[load]);
            Cuts = LinearExpr.Sum(pieces) - batch.Greens.Count;
            if (cuts is { } fixedCuts)
                _model.Add(Cuts == fixedCuts);
        }

        public List<IntVar> Loads { get; }

        public LinearExpr Cuts { get; }

        public bool IsPossible() => Solve().Status is CpSolverStatus.Optimal or CpSolverStatus.Feasible;

        public long Minimized(Func<Model, LinearExpr> aim)
        {
            _model.Minimize(aim(this));
            return Solve() is (CpSolverStatus.Optimal, var value) ? value : throw new InvalidOperationException("The reference did not come to its end.");
        }

        public long Maximized(Func<Model, LinearExpr> aim)
        {
            _model.Maximize(aim(this));
            return Solve() is (CpSolverStatus.Optimal, var value) ? value : throw new InvalidOperationException("The reference did not come to its end.");
        }

        private (CpSolverStatus Status, long Value) Solve()
        {
            var solver = new CpSolver { StringParameters = "num_workers:1,random_seed:7" };
            var status = solver.Solve(_model);
            return status is CpSolverStatus.Optimal or CpSolverStatus.Feasible or CpSolverStatus.Infeasible
                ? (status, status == CpSolverStatus.Infeasible ? 0 : (long)Math.Round(solver.ObjectiveValue))
                : throw new InvalidOperationException($"The reference ended with {status}.");
        }
    }
}
