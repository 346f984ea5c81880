using Google.OrTools.Sat;
using ProcessorDesk.Trade.Kitchen.Planning;

namespace ProcessorDesk.Reference.Tests.Planning;

/// <summary>The order of least cleaning as one round over all profiles and the clean kitchen, from and to which all is free.</summary>
public static class OrderByCircuit
{
    public static int Least(IReadOnlyList<CleaningProfile> profiles, CleaningMinutes minutes)
    {
        var model = new CpModel();
        var (round, costs) = (model.AddCircuit(), new List<LinearExpr>());
        for (var from = 0; from <= profiles.Count; from++)
        {
            for (var to = 0; to <= profiles.Count; to++)
            {
                if (from == to)
                    continue;
                var arc = model.NewBoolVar("");
                round.AddArc(from, to, arc);
                if (from < profiles.Count && to < profiles.Count)
                    costs.Add(arc * Minutes(profiles[from], profiles[to], minutes));
            }
        }

        model.Minimize(LinearExpr.Sum(costs));
        var solver = new CpSolver { StringParameters = "num_workers:1,random_seed:7" };
        return solver.Solve(model) == CpSolverStatus.Optimal ? (int)Math.Round(solver.ObjectiveValue) : throw new InvalidOperationException("The reference did not come to its end.");
    }

    /// <summary>Worked here again from the rule, not asked of the code under test.</summary>
    public static int Minutes(CleaningProfile before, CleaningProfile after, CleaningMinutes minutes) =>
        (before.HoldsPork && !after.HoldsPork ? minutes.Pork : 0)
        + before.Allergens.Count(allergen => !after.Allergens.Contains(allergen)) * minutes.Allergen
        + (before.Species == after.Species ? 0 : minutes.Species)
        + (before.Cured && !after.Cured ? minutes.Cure : 0);
}
