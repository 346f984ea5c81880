using Google.OrTools.LinearSolver;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Blending;
using Xunit;

namespace ProcessorDesk.Reference.Tests.Blending;

/// <summary>
/// Least cost held against the linear solver of OR-Tools. Bounds are whole percents and stocks whole pounds, so that a clash is
/// far wider than the solver's own tolerance.
/// </summary>
public sealed class LeastCostAgainstGlop
{
    private const int Blocks = 600;
    private const double Near = 1e-6;

    [Fact]
    public void Cost_and_feasibility_agree_over_hundreds_of_blocks()
    {
        var (solved, refused) = (0, 0);
        for (var seed = 0; seed < Blocks; seed++)
        {
            var wanted = Wanted(new Random(seed));
            var ours = LeastCost.Find(wanted);
            if (Reference(wanted) is { } cost)
            {
                Assert.True(ours.Blend is not null, $"Block {seed}: the reference finds a mix at {cost}; ours says {string.Join(" ", ours.Findings.Select(finding => finding.Text))}");
                Assert.True(Math.Abs(cost - (double)ours.Blend.CostPerPound.ToDecimal()) <= Near, $"Block {seed}: {cost} against {ours.Blend.CostPerPound}");
                solved++;
            }
            else
            {
                Assert.True(ours.Blend is null, $"Block {seed}: the reference finds no mix; ours costs {ours.Blend?.CostPerPound}");
                refused++;
            }
        }

        Assert.True(solved >= 200 && refused >= 100, $"{solved} with a mix, {refused} without: the blocks made up are too much of one kind.");
    }

    private static BlendWanted Wanted(Random random)
    {
        var block = random.Next(1, 1_000);
        var least = random.Next(0, 60);
        var count = random.Next(1, 13);
        return new BlendWanted(
            Weight.FromPounds(block),
            ScaleDivision.HundredthPound,
            new FatBand(Proportion.FromPercent(least), Proportion.FromPercent(random.Next(least, Math.Min(100, least + 30)))),
            [.. Enumerable.Range(0, count).Select(i => Material(random, $"Material {i}", block, count))]);
    }

    private static BlendMaterial Material(Random random, string name, int block, int count) => new(
        name,
        Proportion.FromPercent(random.Next(0, 101)),
        PricePerPound.FromCents(random.Next(0, 1_500)),
        random.Next(3) == 0 ? Proportion.FromPercent(random.Next(0, 120 / count)) : Proportion.Zero,
        random.Next(3) == 0 ? Proportion.FromPercent(random.Next(20, 101)) : Proportion.Whole,
        random.Next(3) == 0 ? Weight.FromPounds(random.Next(0, block)) : null);

    /// <summary>Dollars a pound by the reference; null where it finds no mix.</summary>
    private static double? Reference(BlendWanted wanted)
    {
        using var solver = Solver.CreateSolver("GLOP");
        var block = (double)wanted.Block.Pounds;
        var pounds = wanted.Materials.Select(material => solver.MakeNumVar(0, block, material.Name)).ToList();
        var all = solver.MakeConstraint(block, block);
        var fat = solver.MakeConstraint(Part(wanted.Fat.Least) * block, Part(wanted.Fat.Most) * block);
        var cost = solver.Objective();
        foreach (var (material, variable) in wanted.Materials.Zip(pounds))
        {
            all.SetCoefficient(variable, 1);
            fat.SetCoefficient(variable, Part(material.Fat));
            cost.SetCoefficient(variable, material.Price.CentsPerPound / 100.0);
            solver.MakeConstraint(Part(material.LeastShare) * block, double.PositiveInfinity).SetCoefficient(variable, 1);
            solver.MakeConstraint(double.NegativeInfinity, Part(material.MostShare) * block).SetCoefficient(variable, 1);
            if (material.OnHand is { } stock)
                solver.MakeConstraint(double.NegativeInfinity, (double)stock.Pounds).SetCoefficient(variable, 1);
        }

        cost.SetMinimization();
        return solver.Solve() switch
        {
            Solver.ResultStatus.OPTIMAL => cost.Value() / block,
            Solver.ResultStatus.INFEASIBLE => null,
            var other => throw new InvalidOperationException($"The reference ended with {other}."),
        };
    }

    private static double Part(Proportion share) => share.PartsPerMillion / 1_000_000.0;
}
