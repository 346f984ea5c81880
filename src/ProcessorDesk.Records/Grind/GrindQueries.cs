using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;

namespace ProcessorDesk.Records;

public static class GrindQueries
{
    /// <summary>The newest formula of each product, with its product and ingredients.</summary>
    public static IQueryable<FormulaVersion> Newest(this IQueryable<FormulaVersion> formulas) =>
        formulas
            .Include(formula => formula.Product)
            .Include(formula => formula.Ingredients)
            .Where(formula => formula.Number == formula.Product.Formulas.Max(other => other.Number));

    /// <summary>The job's asks over its lean as weighed until now, at the newest formulas; two queries.</summary>
    public static GrindPlan PlanGrind(this RecordsContext records, int jobId, Weight lean, ScaleDivision division)
    {
        var asks = records.GrindOrders.AsNoTracking().Where(ask => ask.JobId == jobId).OrderBy(ask => ask.Position).ToList();
        return records.PlanGrind(asks, lean, division);
    }

    /// <summary>Asks that may not be saved yet, over an amount of lean; one query.</summary>
    public static GrindPlan PlanGrind(this RecordsContext records, IReadOnlyList<GrindOrder> asks, Weight lean, ScaleDivision division)
    {
        var products = asks.Select(ask => ask.ProductId).ToList();
        var formulas = records.FormulaVersions.AsNoTracking().Newest()
            .Where(formula => formula.Product.IsPlainGround || products.Contains(formula.ProductId))
            .ToList();
        var plain = formulas.Single(formula => formula.Product.IsPlainGround);
        return GrindPlan.Of(
            lean,
            [.. asks.Select(ask => new PlannedAsk(formulas.Single(one => one.ProductId == ask.ProductId), ask.Kind, ask.Amount, ask.Percent))],
            new PlannedAsk(plain, AskKind.Rest, Weight.Zero, Proportion.Zero),
            division);
    }
}
